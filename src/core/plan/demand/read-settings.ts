import type { Diagnostic } from '../diagnostic.ts';
import type { Program } from '../model/program.ts';
import { type Exact, exact, zero } from '../quantity/exact.ts';
import { isoDate } from '../time/day.ts';
import { type Clock, datedClock, referenceClock, utcMinute, wallMinute } from './clock.ts';
import type { PlanSettings } from './demand.ts';
import { refusal } from './refusal.ts';

/** Settings with everything said. */
export interface Settings {
  readonly clock: Clock;
  readonly builders: number;
  /** Share of spares to add; zero for none. */
  readonly spares: Exact;
  readonly stock: PlanSettings['stock'];
  /** Schedules that may be tried. */
  readonly effort: number | undefined;
}

/** So many builders at most; more people than that share no bench. */
const buildersUpTo = 1_000;

export function readSettings(
  program: Program,
  { start, builders = program.builders, spares, stock, effort }: PlanSettings,
): Settings | { readonly refused: readonly Diagnostic[] } {
  const clock = clockFor(program, start);
  const isCrew = Number.isInteger(builders) && builders >= 1 && builders <= buildersUpTo;
  const crew = refusal('builders-out-of-range', { builders: String(builders), most: String(buildersUpTo) });
  const isEffort = effort === undefined || (Number.isInteger(effort) && effort >= 1);
  const refused = [
    ...('code' in clock ? [clock] : []),
    ...(isCrew ? [] : [crew]),
    ...(isEffort ? [] : [refusal('effort-out-of-range', { effort: String(effort) })]),
  ];
  if ('code' in clock || refused.length > 0) return { refused };
  return { clock, builders, spares: spares === undefined ? zero : exact(spares), stock, effort };
}

/** Dated where a start is set, else the reference week. */
function clockFor(program: Program, start: string | undefined): Clock | Diagnostic {
  if (start === undefined) return referenceClock(program);
  const wall = wallMinute(start);
  if (wall === undefined) return refusal('start-unreadable', { start });
  const utc = utcMinute(wall, program);
  return utc === undefined ? outside(start, program) : datedClock(program, utc);
}

function outside(start: string, { zone, timeZone }: Program): Diagnostic {
  const day = (minute: number): string => isoDate(Math.floor(minute / 1440));
  const [first, last] = [day(zone.changes[0]![0] + 2 * 1440), day(zone.until - 2 * 1440)];
  return refusal('start-outside-zone', { start, zone: timeZone, first, last });
}
