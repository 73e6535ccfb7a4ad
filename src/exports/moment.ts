import type { Program } from '../core/model/program.ts';
import type { PlannedSchedule } from '../core/plan/result.ts';
import { isoTime } from '../core/time/iso-time.ts';

/** A moment as machines read it: ISO 8601 with its offset, or in the reference week whole minutes from its start. */
export type Moment = (minute: number) => string | number;

export function momentOn(clock: PlannedSchedule['clock'], { zone }: Program): Moment {
  return clock === 'dated' ? (minute) => isoTime(zone, minute) : (minute) => minute;
}

/** Moments among the facts (`@1440`) in the form of all other moments. */
export function factsJson(facts: Readonly<Record<string, string>>, at: Moment) {
  return Object.fromEntries(
    Object.entries(facts).map(([name, fact]) => [
      name,
      /^@\d+$/.test(fact) ? at(Number(fact.slice(1))) : fact,
    ]),
  );
}
