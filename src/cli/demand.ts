import type { Guide } from '../core/model/guide.ts';
import type { Workspace } from '../core/model/workspace.ts';
import { nearName } from '../core/near-name.ts';
import type { DemandLine } from '../core/plan/demand.ts';
import { batchUpTo } from '../core/plan/demanded.ts';
import { listed } from '../showing/fill.ts';
import type { Fault } from './fault.ts';
import { fault, withNear } from './fault.ts';
import { wholeNumber } from './options.ts';

const number = wholeNumber(1, batchUpTo);

/** `needle-block:deep=4` as a line of the demand, or why it is none. */
export function readDemand(text: string, batch: number | undefined): DemandLine | Fault {
  const found = /^([^:=/\s]+)(?::([^:=/\s]+))?(\/[^=]*)?(?:=(.*))?$/.exec(text);
  if (!found) return fault('demand-unreadable', { text });
  const [, guide, level, part, written] = found;
  if (part !== undefined) return fault('demand-part', { text });
  if (written !== undefined && batch !== undefined)
    return fault('batch-twice', { text, batch: String(batch) });
  const wanted = written === undefined ? batch : number(written);
  if (written !== undefined && wanted === undefined) return fault('demand-number', { text });
  return {
    guide: guide!,
    ...(level === undefined ? {} : { level }),
    ...(wanted === undefined ? {} : { wanted }),
  };
}

export function isFault(line: DemandLine | Fault): line is Fault {
  return 'code' in line;
}

/**
 * What a demand names that is not there. A guide that could not be read is there: its own errors say why it is not
 * planned.
 */
export function faultsOfDemand(
  demand: readonly DemandLine[],
  guides: Workspace['guides'],
  unread: readonly string[],
): readonly Fault[] {
  const known = [
    ...Object.keys(guides),
    ...unread.filter((path) => path.startsWith('guides/')).map((path) => path.slice(7)),
  ].sort();
  if (demand.length === 0)
    return [known.length > 0 ? fault('no-guide', { known: listed(known) }) : fault('no-guide.none')];
  return demand.flatMap(({ guide, level }) => {
    if (!known.includes(guide))
      return [withNear('unknown-guide', nearName(guide, known), { guide, known: listed(known) })];
    return level === undefined || !Object.hasOwn(guides, guide) ? [] : faultsOfLevel(guides[guide]!, level);
  });
}

function faultsOfLevel({ id: guide, levels }: Guide, level: string): Fault[] {
  const known = levels.map(({ id }) => id);
  if (known.includes(level)) return [];
  if (known.length === 0) return [fault('unknown-level.none', { guide, level })];
  return [withNear('unknown-level', nearName(level, known), { guide, level, known: listed(known) })];
}
