import type { Program } from '../core/model/program.ts';
import type { PlannedSchedule } from '../core/plan/result.ts';
import { isoTime } from '../core/time/iso-time.ts';

/** A moment as machines read it: ISO 8601 with its offset, or in the reference week whole minutes from its start. */
export type Moment = (minute: number) => string | number;

export function momentOn(clock: PlannedSchedule['clock'], { zone }: Program): Moment {
  return clock === 'dated' ? (minute) => isoTime(zone, minute) : (minute) => minute;
}
