import type { GuideAt } from '../../core/model/guide.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { referenceClock } from '../../core/plan/time/clock.ts';
import type { PlannedJob, StepNeed } from '../../core/plan/result.ts';
import { handsOnMinutes, waitMinutes } from '../../core/plan/scale/step-times.ts';
import { planWords } from '../../words/plan.ts';
import { counted, fill } from '../text/fill.ts';
import { shown } from '../shown/shown.ts';
import type { ShownStep } from '../shown/shown-plan.ts';
import { type Clock, showMinutes, showMoment, showMomentFrom, showWork } from '../text/times.ts';

/** The runs of one step in the schedule, in order of start; no jobs and no clock where there is no schedule. */
export interface StepRuns {
  readonly jobs: readonly PlannedJob[];
  readonly clock?: Clock;
}

type StepAt = GuideAt['steps'][number];

/** When the first run begins: "day 1, 09:00". */
export function showBegins({ jobs, clock }: StepRuns): string {
  const first = jobs[0];
  return first && clock ? showMoment(first.start, clock) : '';
}

/** When hands may go on after the wait, of the first run and of the last. Empty where nothing waits. */
export function showNotBefore({ jobs, clock }: StepRuns): string {
  const ends = jobs.filter(({ end, waitEnd }) => waitEnd > end).map(({ waitEnd }) => waitEnd);
  if (!clock || ends.length === 0) return '';
  const [first, last] = [Math.min(...ends), Math.max(...ends)];
  return first === last
    ? fill(planWords.steps.notBefore, { time: showMoment(first, clock) })
    : fill(planWords.steps.notBeforeRuns, {
        first: showMoment(first, clock),
        last: showMomentFrom(first, last, clock),
      });
}

/** Hands-on and wait of one full run; nothing where no run is left to do. */
export function showStepTimes(
  key: string,
  step: StepAt,
  need: StepNeed,
  runs: StepRuns,
  workspace: Workspace,
): ShownStep['times'] {
  if (need.runs.length === 0) return [];
  const handsOn = handsOnMinutes(step, need.runs[0]!.length);
  const wait = waitMinutes(step, workspace, referenceClock(workspace.program));
  const rows = [
    ...(handsOn > 0 ? [{ kind: 'hands-on', minutes: handsOn, note: handsOnNote(step, need) } as const] : []),
    ...(wait > 0
      ? [
          {
            kind: 'wait',
            minutes: wait,
            note: step.watched ? planWords.steps.watched : planWords.steps.wait,
          } as const,
        ]
      : []),
  ];
  return rows.map(({ kind, minutes, note }, i) => ({
    kind,
    time: shown(`${key}[${i}].time`, kind === 'wait' ? showMinutes(minutes) : showWork(minutes)),
    note: shown(`${key}[${i}].note`, note),
  }));
}

function handsOnNote({ people }: StepAt, { runs }: StepNeed): string {
  const { steps } = planWords;
  if (people === 0) return steps.machine;
  const texts = { models: counted(runs[0]?.length ?? 0, 'model'), people: counted(people, 'person') };
  const alone = people === 1;
  if (runs.length === 1) return alone ? steps.handsOnAlone : fill(steps.handsOnPeople, texts);
  if (runs[0]!.length === 1) return alone ? steps.handsOnEach : fill(steps.handsOnEachPeople, texts);
  return fill(alone ? steps.handsOnRun : steps.handsOnRunPeople, texts);
}
