import type { InPieces } from '../../in-pieces.ts';
import { chainOf } from './chain.ts';
import { plannedJobs } from './back.ts';
import type { Line } from '../demand/line.ts';
import { loadsOf } from './loads.ts';
import { headingOf } from './obstacle.ts';
import { personMinutes } from '../demand/plan-runs.ts';
import { linesReady } from './readiness.ts';
import type { NoSchedule, PlannedSchedule } from '../result.ts';
import { type Scheduled, type ToSchedule, schedulingRuns, scheduledUpTo } from './schedule-runs.ts';

/**
 * Who does what when: forwards from the start, everything ready as early as possible; or backwards from the goal,
 * everything begun as late as possible, ready by then and still good.
 */
export function* planningSchedule(
  work: ToSchedule,
): InPieces<PlannedSchedule | { readonly none: NoSchedule }> {
  const count = work.runs.length;
  if (count > scheduledUpTo) {
    const facts = { runs: String(count), most: String(scheduledUpTo) };
    return { none: { code: 'too-many-runs', facts, helps: [] } };
  }
  const lit = litVapour(work.lines);
  if (lit) return { none: lit };
  const found = yield* schedulingRuns(work);
  if ('none' in found) return found;
  const planned = yield* inWords(work, found);
  if (work.arrivals.size === 0) return planned;
  const atHand = yield* schedulingRuns({ ...work, arrivals: new Map() });
  const quickest = 'none' in atHand ? planned : yield* inWords(work, atHand);
  return { ...planned, buildTime: quickest.makespan };
}

/** A step that makes vapour and is an ignition cannot be kept apart from itself. */
function litVapour(lines: readonly Line[]): NoSchedule | undefined {
  for (const { at, hazards } of lines) {
    const step = at.steps.find(({ ignition }, index) => ignition && hazards[index]!.vapour);
    const heading = step && headingOf(at, step.id);
    if (heading) {
      const facts = { step: heading, other: heading };
      return { code: 'schedule-impossible', variant: 'exclusion', facts, helps: [] };
    }
  }
  return undefined;
}

function* inWords(work: ToSchedule, found: Scheduled): InPieces<PlannedSchedule> {
  const { lines, runs, workspace, clock, goal } = work;
  const jobs = plannedJobs(work, found);
  const firstHandsOn = jobs[0]?.start ?? clock.start;
  const ready = jobs.reduce((latest, { waitEnd }) => Math.max(latest, waitEnd), firstHandsOn);
  const bound = found.bound + clock.origin;
  yield;
  const chain = yield* chainOf(found, jobs, goal !== undefined);
  yield;
  return {
    clock: clock.kind,
    start: goal ? firstHandsOn : clock.start,
    firstHandsOn,
    ready,
    makespan: ready - firstHandsOn,
    lowerBound: Math.max(0, goal ? ready - bound : bound - firstHandsOn),
    optimal: found.optimal,
    buildTime: ready - firstHandsOn,
    ...(clock.kind === 'dated' && !goal ? { leadTime: ready - clock.start } : {}),
    ...(goal ? { readyBy: goal.readyBy } : {}),
    handsOn: personMinutes(runs),
    jobs,
    lines: linesReady(lines, jobs, workspace.program, clock),
    chain,
    loads: loadsOf(found, clock, { from: firstHandsOn, to: ready }),
  };
}
