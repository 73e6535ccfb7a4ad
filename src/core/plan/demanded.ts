import type { Diagnostic } from '../diagnostic.ts';
import type { Guide, GuideAt } from '../model/guide.ts';
import { planAt, usualLevel } from '../model/plan-at.ts';
import type { Workspace } from '../model/workspace.ts';
import { nearName } from '../near-name.ts';
import type { DemandLine } from './demand.ts';
import { refusal } from './refusal.ts';

/** A batch has so many models at most. */
export const batchUpTo = 10_000;

/** So many models of a guide at a level. */
export interface Demanded {
  readonly at: GuideAt;
  readonly wanted: number;
}

/**
 * A demand with everything said: the usual level, and the published batch where no number is given. The same guide and
 * level asked for twice is one line.
 */
export function demanded(
  workspace: Workspace,
  demand: readonly DemandLine[],
): { readonly lines: readonly Demanded[] } | { readonly refused: readonly Diagnostic[] } {
  const refused = demand.flatMap((line) => refusalOf(workspace, line));
  if (demand.length === 0) return { refused: [refusal('nothing-to-plan', {})] };
  if (refused.length > 0) return { refused };
  const lines = joined(demand.map((line) => demandedLine(workspace.guides[line.guide]!, line)));
  const tooMany = lines
    .filter(({ wanted }) => wanted > batchUpTo)
    .map(({ at, wanted }) => batchRefusal(at.id, wanted));
  return tooMany.length > 0 ? { refused: tooMany } : { lines };
}

function refusalOf({ guides }: Workspace, { guide: id, level, wanted }: DemandLine): Diagnostic[] {
  const guide = Object.hasOwn(guides, id) ? guides[id] : undefined;
  if (!guide) return [unknown('guide', id, Object.keys(guides), {})];
  const levels = guide.levels.map((known) => known.id);
  if (level !== undefined && !levels.includes(level)) return [unknown('level', level, levels, { guide: id })];
  const isBatch = wanted === undefined || (Number.isInteger(wanted) && wanted >= 1 && wanted <= batchUpTo);
  return isBatch ? [] : [batchRefusal(id, wanted)];
}

/** `unknown-guide`, `unknown-level`: with the nearest name, with all names, or with none to offer. */
function unknown(
  what: 'guide' | 'level',
  id: string,
  known: readonly string[],
  facts: Diagnostic['facts'],
): Diagnostic {
  const near = nearName(id, known);
  const all = { ...facts, [what === 'guide' ? 'guide' : 'level']: id, known: known.join(', ') };
  if (near !== undefined) return refusal(`unknown-${what}`, { ...all, near }, 'near');
  return refusal(`unknown-${what}`, all, known.length === 0 ? 'none' : undefined);
}

function batchRefusal(guide: string, wanted: number): Diagnostic {
  return refusal('batch-out-of-range', { guide, wanted: String(wanted), most: String(batchUpTo) });
}

function demandedLine(guide: Guide, { level = usualLevel(guide), wanted }: DemandLine): Demanded {
  return { at: planAt(guide, level), wanted: wanted ?? guide.states?.for ?? 1 };
}

function joined(lines: readonly Demanded[]): Demanded[] {
  const found: Demanded[] = [];
  for (const line of lines) {
    const same = found.findIndex(({ at }) => at.id === line.at.id && at.level === line.at.level);
    if (same < 0) found.push(line);
    else found[same] = { ...line, wanted: found[same]!.wanted + line.wanted };
  }
  return found;
}
