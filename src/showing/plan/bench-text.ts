import type { IsoDate } from '../../core/model/values.ts';
import { benchWords } from '../../words/bench.ts';
import { calendarWords } from '../../words/calendar.ts';
import { fill } from '../text/fill.ts';
import { showCount } from '../text/numbers.ts';
import { showDate } from '../text/times.ts';

/** A moment on the clock of the reader's device. */
export interface WallMoment {
  readonly day: IsoDate;
  /** Of the day: 825 is 13:45. */
  readonly minute: number;
}

/** "13:45"; with its day where that is not the day of `near`: "Thu 26 November, 13:45". */
export function showWallMoment({ day, minute }: WallMoment, near: WallMoment): string {
  const two = (n: number): string => String(n).padStart(2, '0');
  const time = `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
  return day === near.day ? time : fill(calendarWords.moment, { day: showDate(day, near.day), time });
}

/** "3 of 8 steps done" */
export function showProgress(done: number, all: number): string {
  if (all === 1) return fill(benchWords.progressOne, { done: showCount(done) });
  return fill(benchWords.progress, { done: showCount(done), all: showCount(all) });
}
