import type { Guide } from '../core/model/guide.ts';
import type { Module } from '../core/model/module.ts';
import type { Origins } from '../core/model/origins.ts';
import type { Workspace } from '../core/model/workspace.ts';
import type { Report } from './report.ts';

type Things = Pick<Workspace, 'materials' | 'tools' | 'guides' | 'modules'>;

/** Ids of what has such faults. */
export interface Muddled {
  readonly guides: ReadonlySet<string>;
  readonly modules: ReadonlySet<string>;
}

/** An id of a guide or a module and the path of the value that gives it. */
interface Named {
  readonly id: string;
  readonly path: string;
}

/**
 * Reports ids that stand for two things or for what they may not. Whoever asks for one must get one answer:
 *
 * - ids of levels, steps, checks, cautions, patterns and renewals are unique in their list, ids of pieces in their row;
 * - ids of rows, mixes and parts are unique together (a row that uses a mix bears its name by default);
 * - no mix is named as a material, no part as a tool, no level as a step (in a hold limit by step, both are keys), nor
 *   as a page that every guide has;
 * - of a module, ids of objectives, of all that they are practised at, of all that they are assessed by, and of people
 *   are unique; no module is named as a guide.
 */
export function reportIds(things: Things, origins: Origins, report: Report): Muddled {
  const muddled = { guides: new Set<string>(), modules: new Set<string>() };
  const tellOf =
    (kind: keyof Muddled, of: string): Tell =>
    (code, variant, { id: text, path }, ...also) => {
      muddled[kind].add(of);
      const places = [path, ...also].map((inside) => origins.at(`${kind}/${of}/${inside}`));
      report({ code, ...(variant ? { variant } : {}), facts: { text } }, ...places);
    };
  for (const [id, guide] of Object.entries(things.guides)) {
    const tell = tellOf('guides', id);
    for (const list of listsOf(guide)) reportRepeated(list, tell);
    reportTaken(guide, things, tell);
  }
  for (const [id, module] of Object.entries(things.modules)) {
    const tell = tellOf('modules', id);
    for (const list of listsOfModule(module)) reportRepeated(list, tell);
    if (id in things.guides) tell('id-reserved', 'guide', { id, path: 'title' });
  }
  return muddled;
}

function listsOfModule(module: Module): readonly (readonly Named[])[] {
  const { objectives, stations, activities, cohort, session, scoring, surveys } = module;
  const questions = module.selfCheck.flatMap(({ id }, index) =>
    id === undefined ? [] : [{ id, path: `self-check/${index}/id` }],
  );
  return [
    namesIn(objectives, 'objectives'),
    [...namesIn(stations, 'stations'), ...namesIn(activities, 'activities')],
    [
      ...namesIn(scoring?.items ?? [], 'scoring/items'),
      ...namesIn(scoring?.ratings ?? [], 'scoring/ratings'),
      ...questions,
    ],
    namesIn(cohort.people, 'cohort/people'),
    namesIn(session?.agenda ?? [], 'session/agenda'),
    namesIn(surveys, 'surveys/items'),
  ];
}

type Tell = (code: string, variant: string | undefined, named: Named, ...also: readonly string[]) => void;

function listsOf(guide: Guide): readonly (readonly Named[])[] {
  const simple = (['levels', 'steps', 'checks', 'cautions', 'patterns'] as const).map((key) =>
    namesIn(guide[key], key),
  );
  const pieces = guide.materials.map((row, index) => namesIn(row.pieces, `materials/${index}/pieces`));
  return [...simple, ...pieces, namesIn(guide.inUse.renew, 'in-use/renew'), rowsMixesAndParts(guide)];
}

function namesIn(records: readonly { readonly id: string }[], key: string): readonly Named[] {
  return records.map(({ id }, index) => ({ id, path: `${key}/${index}/id` }));
}

/** A row that uses a mix and says no id of its own is that mix. */
function rowsMixesAndParts(guide: Guide): readonly Named[] {
  const mixes = new Set(guide.mixes.map(({ id }) => id));
  const rows = guide.materials.map(({ id, use }, index) => ({
    id,
    path: `materials/${index}/${id === use ? 'use' : 'id'}`,
  }));
  const ownRows = rows.filter(({ id }, index) => !(mixes.has(id) && guide.materials[index]!.use === id));
  return [...namesIn(guide.parts, 'parts'), ...namesIn(guide.mixes, 'mixes'), ...ownRows];
}

function reportRepeated(list: readonly Named[], tell: Tell): void {
  const first = new Map<string, Named>();
  for (const named of list) {
    const earlier = first.get(named.id);
    if (!earlier) first.set(named.id, named);
    else tell('id-repeated', named.path.endsWith('/use') ? 'row' : undefined, named, earlier.path);
  }
}

/** Pages of a guide beside those of its levels, which bear the names of the levels. */
const pagesOfGuides = new Set(['bench-sheet', 'cutting-plan']);

/** Names that mean something else already, elsewhere in the guide or the workspace. */
function reportTaken(guide: Guide, { materials, tools }: Things, tell: Tell): void {
  const steps = new Set(guide.steps.map(({ id }) => id));
  const taken: readonly (readonly [
    variant: string,
    named: readonly Named[],
    isTaken: (id: string) => boolean,
  ])[] = [
    ['tool', namesIn(guide.parts, 'parts'), (id) => id in tools],
    ['step', namesIn(guide.levels, 'levels'), (id) => steps.has(id)],
    ['page', namesIn(guide.levels, 'levels'), (id) => pagesOfGuides.has(id)],
    ['material', namesIn(guide.mixes, 'mixes'), (id) => id in materials],
  ];
  for (const [variant, named, isTaken] of taken) {
    for (const one of named) if (isTaken(one.id)) tell('id-reserved', variant, one);
  }
}
