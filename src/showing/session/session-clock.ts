import { sessionWords } from '../../words/session.ts';
import { fill } from '../fill.ts';

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
    const at = starts === undefined ? minute : (starts + minute + minutesADay) % minutesADay;
    const [hours, minutes] = [Math.floor(at / 60), at % 60];
    return fill(sessionWords.clock, {
      hours: String(hours).padStart(starts === undefined ? 1 : 2, '0'),
      minutes: String(minutes).padStart(2, '0'),
    });
  };
}

/** "0:15–0:30" */
export function rangeOn(clock: SessionClock, from: number, to: number): string {
  return fill(sessionWords.range, { from: clock(from), to: clock(to) });
}
