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
 * - no mix is named as a material, no part as a tool or `model`, `zone`, `batch`;
 * - no level is named like a key of a time: `once`, `each`, `as`, `usual`, `until`, `if-…`.
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
    reportReserved(guide, things, tell);
  }
  return muddled;
}

type Tell = (code: string, variant: string | undefined, named: Named, ...also: readonly string[]) => void;

function listsOf(guide: Guide): readonly (readonly Named[])[] {
  const simple = (['levels', 'steps', 'checks', 'cautions', 'patterns'] as const).map((key) => namesIn(guide[key], key));
  const pieces = guide.materials.map((row, index) => namesIn(row.pieces, `materials/${index}/pieces`));
  return [...simple, ...pieces, namesIn(guide.inUse.renew, 'in-use/renew'), rowsMixesAndParts(guide)];
}

function namesIn(records: readonly { readonly id: string }[], key: string): readonly Named[] {
  return records.map(({ id }, index) => ({ id, path: `${key}/${index}/id` }));
}

/** A row that uses a mix and says no id of its own is that mix. */
function rowsMixesAndParts(guide: Guide): readonly Named[] {
  const mixes = new Set(guide.mixes.map(({ id }) => id));
  const rows = guide.materials.map(({ id, use }, index) => ({ id, path: `materials/${index}/${id === use ? 'use' : 'id'}` }));
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

const reservedForParts = new Set(['model', 'zone', 'batch']);
const reservedForLevels = new Set(['once', 'each', 'as', 'usual', 'until']);

function reportReserved(guide: Guide, { materials, tools }: Things, tell: Tell): void {
  for (const part of namesIn(guide.parts, 'parts')) {
    if (reservedForParts.has(part.id)) tell('id-reserved', 'part', part);
    else if (part.id in tools) tell('id-reserved', 'tool', part);
  }
  for (const level of namesIn(guide.levels, 'levels')) {
    if (reservedForLevels.has(level.id) || level.id.startsWith('if-')) tell('id-reserved', 'level', level);
  }
  for (const level of namesIn(guide.levels, 'levels')) {
    if (guide.steps.some(({ id }) => id === level.id)) tell('id-reserved', 'step', level);
  }
  for (const mix of namesIn(guide.mixes, 'mixes')) {
    if (mix.id in materials) tell('id-reserved', 'material', mix);
  }
}
