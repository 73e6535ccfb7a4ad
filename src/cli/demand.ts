import { given } from '../core/given.ts';
import type { Workspace } from '../core/model/workspace.ts';
import { nearName } from '../core/near-name.ts';
import type { DemandLine } from '../core/plan/demand.ts';
import { readBatch } from '../core/plan/demand/read-option.ts';
import { listed } from '../showing/text/fill.ts';
import type { Fault } from './fault.ts';
import { fault, withNear } from './fault.ts';

/** `needle-block:deep=4`, `rib-frame/skin=8` as a line of the demand, or why it is none. */
export function readDemand(text: string, batch: number | undefined): DemandLine | Fault {
  const found = /^([^:=/\s]+)(?::([^:=/\s]+))?(?:\/([^:=/\s]+))?(?:=(.*))?$/.exec(text);
  if (!found) return fault('demand-unreadable', { text });
  const [, guide, level, part, written] = found;
  if (written !== undefined && batch !== undefined)
    return fault('batch-twice', { text, batch: String(batch) });
  const wanted = written === undefined ? batch : readBatch(written);
  if (written !== undefined && wanted === undefined) return fault('demand-number', { text });
  return given<DemandLine>({ guide: guide!, level, part, wanted });
}

export function isFault(line: DemandLine | Fault): line is Fault {
  return 'code' in line;
}

/**
 * What a demand names that is not there; what is near may be a module. A guide that could not be read is there: its own errors say why it is not
 * planned.
 */
export function faultsOfDemand(
  demand: readonly DemandLine[],
  guides: Workspace['guides'],
  unread: readonly string[],
  modules: readonly string[],
): readonly Fault[] {
  const known = [
    ...Object.keys(guides),
    ...unread.filter((path) => path.startsWith('guides/')).map((path) => path.slice(7)),
  ].sort();
  if (demand.length === 0)
    return [known.length > 0 ? fault('no-guide', { known: listed(known) }) : fault('no-guide.none')];
  return demand.flatMap(({ guide, level, part }) => {
    if (!known.includes(guide))
      return [
        withNear('unknown-guide', nearName(guide, [...known, ...modules]), { guide, known: listed(known) }),
      ];
    if (!Object.hasOwn(guides, guide)) return [];
    const { levels, parts } = guides[guide]!;
    return [...faultsOfName('level', guide, level, levels), ...faultsOfName('part', guide, part, parts)];
  });
}

function faultsOfName(
  what: 'level' | 'part',
  guide: string,
  name: string | undefined,
  among: readonly { readonly id: string }[],
): Fault[] {
  const known = among.map(({ id }) => id);
  if (name === undefined || known.includes(name)) return [];
  if (known.length === 0) return [fault(`unknown-${what}.none`, { guide, [what]: name })];
  return [withNear(`unknown-${what}`, nearName(name, known), { guide, [what]: name, known: listed(known) })];
}
