import { sessionWords } from '../../words/session.ts';
import { fill } from '../text/fill.ts';

const minutesADay = 1440;

/** Turns minutes from the beginning of a session into text. */
export type SessionClock = (minute: number) => string;

/**
 * The clock of a session: "0:15", or by the clock on the wall "13:15".
 *
 * @param starts  Minutes from midnight; counted from 0 where left out.
 */
export function sessionClock(starts?: number): SessionClock {
  return (minute) => {
    const at = starts === undefined ? minute : modulo(starts + minute, minutesADay);
    const [hours, minutes] = [Math.floor(at / 60), at % 60];
    return fill(sessionWords.clock, {
      hours: String(hours).padStart(starts === undefined ? 1 : 2, '0'),
      minutes: String(minutes).padStart(2, '0'),
    });
  };
}

/** The remainder that is never below zero. */
function modulo(of: number, by: number): number {
  return ((of % by) + by) % by;
}

/** How many days before the day on which a session begins a minute lies; 0 for that day. */
export function daysBefore(starts: number, minute: number): number {
  return Math.max(0, -Math.floor((starts + minute) / minutesADay));
}

/** "0:15–0:30" */
export function rangeOn(clock: SessionClock, from: number, to: number): string {
  return fill(sessionWords.range, { from: clock(from), to: clock(to) });
}
