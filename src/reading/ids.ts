import type { Guide } from '../core/model/guide.ts';
import type { Origins } from '../core/model/origins.ts';
import type { Workspace } from '../core/model/workspace.ts';
import type { Report } from './report.ts';

type Things = Pick<Workspace, 'materials' | 'tools' | 'guides'>;

/** An id of a guide and the path of the value that gives it. */
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
 *   as a page that every guide has.
 *
 * @returns Ids of the guides that have such faults.
 */
export function reportIds(things: Things, origins: Origins, report: Report): ReadonlySet<string> {
  const muddled = new Set<string>();
  for (const [id, guide] of Object.entries(things.guides)) {
    const tell: Tell = (code, variant, { id: text, path }, ...also) => {
      muddled.add(id);
      const places = [`${path}`, ...also].map((inside) => origins.at(`guides/${id}/${inside}`));
      report({ code, ...(variant ? { variant } : {}), facts: { text } }, ...places);
    };
    for (const list of listsOf(guide)) reportRepeated(list, tell);
    reportTaken(guide, things, tell);
  }
  return muddled;
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
