import type { Diagnostic } from '../../diagnostic.ts';
import type { Guide } from '../../model/guide.ts';
import { planAt } from '../../model/plan-at.ts';
import type { Workspace } from '../../model/workspace.ts';
import { nearName } from '../../near-name.ts';
import type { DemandLine } from '../demand.ts';
import type { Asked } from './line.ts';
import { partAlone } from './part-alone.ts';
import { refusal } from '../refusal.ts';
import { densityOf } from '../scale/requirements.ts';

/** A batch has so many models at most. */
export const batchUpTo = 10_000;

/**
 * A demand with everything said: the usual level, and the published batch where no number is given. The same guide,
 * level and part asked for twice is one line.
 */
export function demanded(
  workspace: Workspace,
  demand: readonly DemandLine[],
): { readonly lines: readonly Asked[] } | { readonly refused: readonly Diagnostic[] } {
  const refused = demand.flatMap((line) => refusalOf(workspace, line));
  if (demand.length === 0) return { refused: [refusal('nothing-to-plan', {})] };
  if (refused.length > 0) return { refused };
  const lines = joined(demand.map((line) => askedOf(line, workspace)));
  const tooMany = lines.filter(({ wanted }) => wanted > batchUpTo);
  return tooMany.length > 0
    ? { refused: tooMany.map(({ at, wanted }) => batchRefusal(at.id, wanted)) }
    : { lines };
}

function refusalOf({ guides }: Workspace, { guide: id, level, part, wanted }: DemandLine): Diagnostic[] {
  if (!Object.hasOwn(guides, id)) return [unknown('guide', id, Object.keys(guides), {})];
  const { levels, parts, steps } = guides[id]!;
  const levelIds = levels.map((known) => known.id);
  const partIds = parts.map((known) => known.id);
  if (level !== undefined && !levelIds.includes(level))
    return [unknown('level', level, levelIds, { guide: id })];
  if (part !== undefined && !partIds.includes(part)) return [unknown('part', part, partIds, { guide: id })];
  if (part !== undefined && !steps.some(({ for: basis }) => basis.per === 'part' && basis.part === part)) {
    return [refusal('part-without-steps', { guide: id, part })];
  }
  const isBatch = wanted === undefined || (Number.isInteger(wanted) && wanted >= 1 && wanted <= batchUpTo);
  return isBatch ? [] : [batchRefusal(id, wanted)];
}

/** `unknown-guide`, `-level`, `-part`: with the nearest name, with all names, or with none to offer. */
function unknown(
  what: 'guide' | 'level' | 'part',
  id: string,
  known: readonly string[],
  facts: Diagnostic['facts'],
): Diagnostic {
  const near = nearName(id, known);
  const all = { ...facts, [what]: id, known: known.join(', ') };
  if (near !== undefined) return refusal(`unknown-${what}`, { ...all, near }, 'near');
  return refusal(`unknown-${what}`, all, known.length === 0 ? 'none' : undefined);
}

function batchRefusal(guide: string, wanted: number): Diagnostic {
  return refusal('batch-out-of-range', { guide, wanted: String(wanted), most: String(batchUpTo) });
}

function askedOf({ guide: id, level, part, wanted }: DemandLine, { guides, materials }: Workspace): Asked {
  const guide: Guide = guides[id]!;
  const at = planAt(guide, level);
  const counts = { wanted: wanted ?? guide.states?.for ?? 1, forOthers: 0 };
  if (part === undefined) return { at, ...counts };
  return { at: partAlone(at, part, (material) => densityOf(materials[material])), part, ...counts };
}

function joined(lines: readonly Asked[]): Asked[] {
  const found: Asked[] = [];
  for (const line of lines) {
    const same = found.findIndex(
      ({ at, part }) => at.id === line.at.id && at.level === line.at.level && part === line.part,
    );
    if (same < 0) found.push(line);
    else found[same] = { ...line, wanted: found[same]!.wanted + line.wanted };
  }
  return found;
}
