import type { Exclusion, Member, ScheduleProblem } from '../solve/schedule/problem.ts';
import type { Clock } from './clock.ts';
import { heldThings } from './held.ts';
import type { Jobs } from './jobs.ts';
import { insertLags } from './insert-lags.ts';
import type { Lines } from './inserts.ts';
import { lagsOf } from './lags.ts';
import type { Line } from './line.ts';
import type { Run } from './plan-runs.ts';
import { type Resources, buildersAt } from './resources.ts';
import { vapourMinutes } from './step-times.ts';
import { isInHand } from './step-uses.ts';

/** What the translation of a plan starts from. */
export interface Workload extends Lines {
  readonly jobs: Jobs;
  readonly resources: Resources;
  readonly clock: Clock;
  /** Minutes from the clock's origin at which a run may begin: when its materials are there. */
  readonly notBefore: (run: Run) => number;
  /** Schedules that may be tried; as many as the search finds worth it where left out. */
  readonly budget?: number;
}

/** The guides of a plan as a general scheduling problem; job by job in the order of `Jobs`. */
export function translate({
  lines,
  inserts,
  jobs,
  resources,
  clock,
  notBefore,
  budget,
}: Workload): ScheduleProblem {
  const { runs, waits } = jobs;
  const steps = [...new Set(runs.map(({ step }) => step))];
  const waiting = waits.map(({ of }) => runs[of]!);
  const nothing = resources.capacities.map(() => 0);
  return {
    durations: [...runs.map(({ handsOn }) => handsOn), ...waiting.map(({ wait }) => wait)],
    lags: [...lagsOf(lines, jobs), ...insertLags(lines, inserts, jobs)],
    demands: [...runs.map((run) => demandOf(run, lines[run.line]!, resources)), ...waits.map(() => nothing)],
    capacities: resources.capacities,
    calendars: [clock.calendar],
    calendarOf: [...runs.map(() => 0), ...waiting.map(({ step }) => (step.watched ? 0 : -1))],
    splits: [...runs.map(({ step }) => step.mayPause && step.people > 0), ...waits.map(() => false)],
    startsOnly: [...runs.map(({ step }) => step.people === 0), ...waits.map(() => false)],
    releases: [...runs.map(notBefore), ...waits.map(() => 0)],
    holds: heldThings(lines, jobs, resources),
    exclusions: vapourAndIgnition(lines, jobs),
    kinds: [...runs, ...waiting].map(({ step }) => steps.indexOf(step)),
    ...(budget === undefined ? {} : { budget }),
  };
}

/** Held while hands are on: builders, places, tools in hand. */
function demandOf({ step, people }: Run, { at }: Line, resources: Resources): number[] {
  const demand = resources.capacities.map(() => 0);
  const add = (resource: number | undefined, count: number): void => {
    if (resource !== undefined) demand[resource]! += count;
  };
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
    const isVapour = lines[run.line]!.hazards.some(({ step, vapour }) => vapour && step === run.step.id);
    return isVapour ? [{ job, after: vapourMinutes(run.step) }] : [];
  });
  const other = runs.flatMap(({ step }, job): Member[] => {
    const wait = waitOf(job);
    return step.ignition ? [{ job, after: 0 }, ...(wait ? [{ job: wait.job, after: 0 }] : [])] : [];
  });
  return one.length > 0 && other.length > 0 ? [{ one, other }] : [];
}
