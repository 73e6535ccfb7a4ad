import type { Exclusion, Member, ScheduleProblem } from '../../solve/schedule/problem.ts';
import type { Clock } from '../time/clock.ts';
import { heldThings } from './held.ts';
import type { Jobs } from './jobs.ts';
import { insertLags } from './insert-lags.ts';
import type { Lines } from '../demand/inserts.ts';
import { lagsOf } from './lags.ts';
import type { Line } from '../demand/line.ts';
import type { Run } from '../demand/plan-runs.ts';
import { type Resources, buildersAt } from './resources.ts';
import { vapourMinutes } from '../scale/step-times.ts';
import { isInHand } from '../scale/step-uses.ts';
import type { Window } from './windows.ts';

/** What the translation of a plan starts from. */
export interface Workload extends Lines {
  readonly jobs: Jobs;
  readonly resources: Resources;
  readonly clock: Clock;
  /** Minutes from the clock's origin between which hands are on in a run. */
  readonly windowOf: (run: Run) => Window;
  /** What the search may do. */
  readonly search: SearchFor;
}
export type SearchFor = Pick<ScheduleProblem, 'budget' | 'placements' | 'latest'>;

/** The guides of a plan as a general scheduling problem; job by job in the order of `Jobs`. */
export function translate({
  lines,
  inserts,
  jobs,
  resources,
  clock,
  windowOf,
  search,
}: Workload): ScheduleProblem {
  const { runs, waits } = jobs;
  const steps = [...new Set(runs.map(({ step }) => step))];
  const waiting = waits.map(({ of }) => runs[of]!);
  const nothing = resources.capacities.map(() => 0);
  const windows = runs.map(windowOf);
  const ofRuns = <T>(value: (run: Run) => T, ofWaits: T): readonly T[] => [
    ...runs.map(value),
    ...waits.map(() => ofWaits),
  ];
  return {
    durations: [...runs.map(({ handsOn }) => handsOn), ...waiting.map(({ wait }) => wait)],
    lags: [...lagsOf(lines, jobs), ...insertLags(lines, inserts, jobs)],
    demands: ofRuns((run) => demandOf(run, lines[run.line]!, resources), nothing),
    capacities: resources.capacities,
    crew: buildersAt,
    calendars: [clock.calendar],
    calendarOf: [
      ...runs.map(({ past }) => (past ? -1 : 0)),
      ...waiting.map(({ step }) => (step.watched ? 0 : -1)),
    ],
    splits: ofRuns(({ step, past }) => !past && step.mayPause && step.people > 0, false),
    startsOnly: ofRuns(({ step, past }) => !past && step.people === 0, false),
    releases: [...windows.map(({ from }) => from), ...waits.map(() => 0)],
    deadlines: [...windows.map(({ until }) => until), ...waits.map(({ of }) => windows[of]!.over)],
    holds: heldThings(lines, jobs, resources),
    exclusions: vapourAndIgnition(lines, jobs),
    kinds: [...runs, ...waiting].map(({ step }) => steps.indexOf(step)),
    ...search,
  };
}

/** Held while hands are on: builders, places, tools in hand. By a run that is past, nothing. */
function demandOf({ step, people, past }: Run, { at }: Line, resources: Resources): number[] {
  const demand = resources.capacities.map(() => 0);
  const add = (resource: number | undefined, count: number): void => {
    if (resource !== undefined) demand[resource]! += count;
  };
  if (past) return demand;
  add(buildersAt, people);
  Object.entries(step.at).forEach(([place, count]) => add(resources.placeOf(place), count));
  at.tools
    .filter((row) => isInHand(at, row, step))
    .forEach((row) => add(resources.toolOf(row.use), row.count));
  return demand;
}

/** Vapour lasts until it has cleared, ignition through its wait. The two never overlap. */
function vapourAndIgnition(lines: readonly Line[], { runs, waitOf }: Jobs): readonly Exclusion[] {
  const one = runs.flatMap((run, job): Member[] => {
    const isVapour =
      !run.past && lines[run.line]!.hazards.some(({ step, vapour }) => vapour && step === run.step.id);
    return isVapour ? [{ job, after: vapourMinutes(run.step) }] : [];
  });
  const other = runs.flatMap(({ step, past }, job): Member[] => {
    const wait = waitOf(job);
    return step.ignition && !past ? [{ job, after: 0 }, ...(wait ? [{ job: wait.job, after: 0 }] : [])] : [];
  });
  return one.length > 0 && other.length > 0 ? [{ one, other }] : [];
}
