import type { Workspace } from '../model/workspace.ts';
import { schedule } from '../solve/schedule/schedule.ts';
import type { Arrivals } from './arrivals.ts';
import { plannedJobs } from './back.ts';
import type { Clock } from './clock.ts';
import type { Lines } from './inserts.ts';
import { jobsOf, stepsAfter } from './jobs.ts';
import { goodUntil } from './keeping.ts';
import type { Line } from './line.ts';
import { headingOf, noSchedule } from './obstacle.ts';
import { type Run, personMinutes } from './plan-runs.ts';
import { buildersAt, resourcesOf } from './resources.ts';
import type { NoSchedule, PlannedJob, PlannedSchedule } from './result.ts';
import { type Workload, translate } from './translate.ts';
import { withHelp } from './with-help.ts';

/** Above so many runs the first schedule found is not improved. */
export const improvedUpTo = 2_000;
/** Above so many none is made. */
export const scheduledUpTo = 20_000;

/** What a schedule is made of. */
export interface ToSchedule extends Lines {
  readonly runs: readonly Run[];
  readonly workspace: Workspace;
  readonly clock: Clock;
  readonly arrivals: Arrivals;
  readonly builders: number;
  /** Schedules that may be tried. */
  readonly effort: number | undefined;
}

/** Who does what when, forwards from the start: everything ready as early as possible. */
export function planSchedule(work: ToSchedule): PlannedSchedule | { readonly none: NoSchedule } {
  const { runs, clock, arrivals } = work;
  if (runs.length > scheduledUpTo) {
    return {
      none: { code: 'too-many-runs', facts: { runs: String(runs.length), most: String(scheduledUpTo) } },
    };
  }
  const lit = litVapour(work.lines);
  if (lit) return { none: lit };
  const found = scheduleRuns(work);
  if ('none' in found) {
    return { none: withHelp(found.none, work, (other) => !('none' in scheduleRuns(other))) };
  }
  const planned = inWords(work, found);
  const waitsForGoods = [...arrivals.values()].some(({ at }) => at > clock.start);
  if (!waitsForGoods) return planned;
  const atHand = scheduleRuns({ ...work, arrivals: new Map() });
  return { ...planned, buildTime: 'none' in atHand ? planned.makespan : inWords(work, atHand).makespan };
}

/** A step that makes vapour and is an ignition cannot be kept apart from itself. */
function litVapour(lines: readonly Line[]): NoSchedule | undefined {
  for (const { at, hazards } of lines) {
    const step = at.steps.find(({ ignition }, index) => ignition && hazards[index]!.vapour);
    const heading = step && headingOf(at, step.id);
    if (heading)
      return { code: 'schedule-impossible', variant: 'exclusion', facts: { step: heading, other: heading } };
  }
  return undefined;
}

interface Found {
  readonly jobs: readonly PlannedJob[];
  readonly lowerBound: number;
  readonly optimal: boolean;
}

function scheduleRuns(work: ToSchedule): Found | { readonly none: NoSchedule } {
  const { lines, inserts, runs, workspace, clock, builders } = work;
  const jobs = jobsOf(lines, runs);
  const resources = resourcesOf(lines, workspace.program, builders);
  const workload: Workload = { lines, inserts, jobs, resources, clock, notBefore: notBefore(work) };
  const budget = runs.length > improvedUpTo ? 1 : work.effort;
  const problem = translate(budget === undefined ? workload : { ...workload, budget });
  const result = schedule(problem);
  const context = { lines, jobs, resources, problem };
  if ('impossible' in result) return { none: noSchedule('schedule-impossible', result.impossible, context) };
  if ('notFound' in result) return { none: noSchedule('schedule-not-found', result.notFound, context) };
  const times = {
    builders: resources.capacities[buildersAt]!,
    calendar: clock.calendar,
    origin: clock.origin,
  };
  const { lowerBound, optimal } = result;
  return { jobs: plannedJobs(lines, jobs, result, times), lowerBound: lowerBound + clock.origin, optimal };
}

/** A run begins when all materials of its step are there, unless the stock is enough for its models. */
function notBefore({ lines, arrivals, clock }: ToSchedule): Workload['notBefore'] {
  const awaited = lines.map(({ at, draws }) =>
    at.steps.map((_, step) => {
      const own = draws.filter((draw) => draw.step === step);
      return own.flatMap((draw) => arrivals.get(materialDrawn(at, draw)) ?? []);
    }),
  );
  return ({ line, step, models }) => {
    const ofStep = awaited[line]![lines[line]!.at.steps.indexOf(step)]!;
    const waitedFor = ofStep.filter(({ modelsBefore }) => models.at(-1)! > modelsBefore[line]!);
    return Math.max(0, ...waitedFor.map(({ at }) => at - clock.origin));
  };
}

/** The material, or the mix, that a step draws on. */
function materialDrawn(at: Line['at'], draw: Line['draws'][number]): string {
  if (draw.of !== 'ingredient') return at.materials[draw.row]!.use;
  return at.mixes.find(({ id }) => id === draw.mix)!.of[draw.index]!.use;
}

function inWords(
  { lines, runs, workspace, clock }: ToSchedule,
  { jobs, lowerBound, optimal }: Found,
): PlannedSchedule {
  const firstHandsOn = Math.min(...jobs.map(({ start }) => start));
  const ready = Math.max(...jobs.map(({ waitEnd }) => waitEnd));
  return {
    clock: clock.kind,
    start: clock.start,
    firstHandsOn,
    ready,
    makespan: ready - firstHandsOn,
    lowerBound: Math.max(0, lowerBound - firstHandsOn),
    optimal,
    buildTime: ready - firstHandsOn,
    ...(clock.kind === 'dated' ? { leadTime: ready - clock.start } : {}),
    handsOn: personMinutes(runs),
    jobs,
    lines: lines.map((line, index) =>
      readiness(
        line,
        jobs.filter((job) => job.line === index),
        workspace,
        clock,
      ),
    ),
  };
}

/** When the last model is ready, and until when the first of them is good at its longest `keeps`. */
function readiness({ at, made }: Line, jobs: readonly PlannedJob[], { program }: Workspace, clock: Clock) {
  const last = new Set(at.steps.filter((step) => stepsAfter(at, step).length === 0).map(({ id }) => id));
  const readyAt = Array.from({ length: made }, () => -Infinity);
  for (const { models, waitEnd } of jobs.filter(({ step }) => last.has(step))) {
    for (const model of models) readyAt[model - 1] = Math.max(readyAt[model - 1]!, waitEnd);
  }
  const ready = Math.max(...readyAt);
  const first = Math.min(...readyAt);
  const until = at.keeps.map((keeps) => goodUntil(first, keeps.for, clock, program));
  return { ready, ...(until.length > 0 ? { useBy: Math.max(...until) } : {}) };
}
