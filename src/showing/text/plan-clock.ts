import type { Workspace } from '../../core/model/workspace.ts';
import { referenceClock } from '../../core/plan/time/clock.ts';
import type { Plan, PlannedSchedule } from '../../core/plan/result.ts';
import type { Clock } from './times.ts';

/** Days of the reference week count from its start; dates are those of the program's zone. */
export function clockOf(
  { clock, start }: Pick<PlannedSchedule, 'clock' | 'start'>,
  { program }: Workspace,
): Clock {
  return { kind: clock, start, zone: program.zone };
}

/** The clock of a plan, whether or not it has a schedule. */
export function planClock({ schedule }: Plan, workspace: Workspace): Clock {
  if (!('none' in schedule)) return clockOf(schedule, workspace);
  const { start } = referenceClock(workspace.program);
  return clockOf(schedule.none.clock ?? { clock: 'reference-week', start }, workspace);
}
