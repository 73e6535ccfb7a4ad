import type { Program } from '../../model/program.ts';
import { exact } from '../../quantity/exact.ts';
import { openHours, startFor } from '../../solve/schedule/ground/calendar.ts';
import type { Arrivals } from '../buy/arrivals.ts';
import type { Clock } from '../time/clock.ts';
import { isLast } from './jobs.ts';
import { readyFrom } from '../time/keeping.ts';
import type { Line } from '../demand/line.ts';
import type { Run } from '../demand/plan-runs.ts';
import type { Goal } from '../demand/read-settings.ts';

/** When hands may be on in a run, in minutes from the clock's origin: the least start and the greatest end. */
export interface Window {
  readonly from: number;
  /** `Infinity` in a plan that runs forwards. */
  readonly until: number;
  /** The greatest end of its wait. */
  readonly over: number;
}

/** What bounds the runs of a plan in time, whatever the other runs do. */
export interface Bounds {
  readonly lines: readonly Line[];
  readonly program: Program;
  readonly clock: Clock;
  readonly arrivals: Arrivals;
  readonly goal?: Goal;
}

/**
 * The window of each run: its materials are there; planned backwards, it is also over, the last with its wait,
 * before all is to be ready, and a model is not ready so early that it goes off too soon.
 *
 *     keeps 3 d                 |<------ 3 d ------>|
 *     ... =unmould=| too early  |  ready in here    | good until here
 *
 * Where several steps end a model, each of them must: what is finished first is the first to go off.
 */
export function windowsOf(bounds: Bounds): (run: Run) => Window {
  const { clock, goal } = bounds;
  const awaited = arrivalAt(bounds);
  const over = (goal?.readyBy ?? Infinity) - clock.origin;
  if (!goal) return (run) => ({ from: run.past ? 0 : awaited(run), until: over, over });
  const freshFrom = bounds.lines.map((line) => earliestReady(line, goal, bounds));
  return (run) => {
    if (run.past) return { from: 0, until: over, over };
    const fresh = isKept(run, bounds.lines) ? freshFrom[run.line]! - run.wait : 0;
    const from = Math.max(awaited(run), startToEnd(fresh, run, clock));
    return { from, until: isLast(run, bounds.lines) ? over - run.wait : over, over };
  };
}

/** A run begins when all materials of its step are there, unless the stock is enough for its models. */
function arrivalAt({ lines, arrivals, clock }: Bounds): (run: Run) => number {
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
export function materialDrawn(at: Line['at'], draw: Line['draws'][number]): string {
  if (draw.of !== 'ingredient') return at.materials[draw.row]!.use;
  return at.mixes.find(({ id }) => id === draw.mix)!.of[draw.index]!.use;
}

/** From when on a model that is ready is good as long as it must be, at its longest `keeps`. */
function earliestReady({ at }: Line, { goodUntil }: Goal, { clock, program }: Bounds): number {
  const earliest = at.keeps.map((keeps) => readyFrom(clock.start, goodUntil, keeps.for, clock, program));
  return (earliest.length > 0 ? Math.min(...earliest) : clock.start) - clock.origin;
}

/** The last run of models that are wanted for themselves; those that go into others are the first ones. */
function isKept(run: Run, lines: readonly Line[]): boolean {
  const { at, forOthers, finished, wanted } = lines[run.line]!;
  const goElsewhere = exact(forOthers - finished).div(exact(at.yields));
  return isLast(run, lines) && wanted > forOthers && goElsewhere.compare(run.models.at(-1)!) < 0;
}

/** The least start with which hands are not off a run before a minute. */
function startToEnd(end: number, { handsOn, step, people }: Run, { calendar }: Clock): number {
  const hours = openHours(calendar);
  const pauses = step.mayPause && people > 0 && hours !== undefined;
  return pauses ? startFor(hours, end, handsOn) : end - handsOn;
}
