import type { CohortPlan } from '../../core/plan/cohort/cohort.ts';
import { sessionWords } from '../../words/session.ts';
import { counted, fill } from '../text/fill.ts';
import { shown } from '../shown/shown.ts';
import { showMinutes } from '../text/times.ts';
import { daysBefore, sessionClock } from './session-clock.ts';
import type { ShownSession } from './shown-session.ts';

const words = sessionWords.care;

/** @param starts  When the session begins, in minutes from midnight, where that is known. */
export function showCare(
  key: string,
  { care: { setUp, after } }: CohortPlan,
  starts: number | undefined,
): ShownSession['care'] {
  return {
    setUp: shown(`${key}.setUp`, setUp === 0 ? '' : setUpText(setUp, starts)),
    after: shown(`${key}.after`, after === 0 ? '' : fill(words.after, { longest: showMinutes(after) })),
  };
}

function setUpText(minutes: number, starts: number | undefined): string {
  const longest = showMinutes(minutes);
  if (starts === undefined) return fill(words.setUpBefore, { longest });
  const texts = { time: sessionClock(starts)(-minutes), longest };
  const days = daysBefore(starts, -minutes);
  if (days === 0) return fill(words.setUp, texts);
  if (days === 1) return fill(words.setUpDayBefore, texts);
  return fill(words.setUpDaysBefore, { ...texts, days: counted(days, 'day') });
}
