import type { CohortPlan } from '../../core/plan/cohort/cohort.ts';
import { sessionWords } from '../../words/session.ts';
import { fill } from '../fill.ts';
import { shown } from '../shown.ts';
import { showMinutes } from '../times.ts';
import type { SessionClock } from './session-clock.ts';
import type { ShownSession } from './shown-session.ts';

const words = sessionWords.care;

/** @param clock  Where it is known when the session begins. */
export function showCare(
  key: string,
  { care: { setUp, after } }: CohortPlan,
  clock: SessionClock | undefined,
): ShownSession['care'] {
  return {
    setUp: shown(`${key}.setUp`, setUp === 0 ? '' : setUpText(setUp, clock)),
    after: shown(`${key}.after`, after === 0 ? '' : fill(words.after, { longest: showMinutes(after) })),
  };
}

function setUpText(minutes: number, clock: SessionClock | undefined): string {
  const longest = showMinutes(minutes);
  return clock ? fill(words.setUp, { time: clock(-minutes), longest }) : fill(words.setUpBefore, { longest });
}
