import type { Program } from '../core/model/program.ts';
import type { Plan, PlannedJob, PlannedLine, PlannedSchedule } from '../core/plan/result.ts';
import { printDuration } from '../core/time/duration.ts';
import { isoTime } from '../core/time/iso-time.ts';

/** A moment as machines read it: ISO 8601 with its offset, or in the reference week whole minutes from its start. */
type Moment = (minute: number) => string | number;

/** The schedule of a plan; why there is none, where there is none. */
export function scheduleJson({ schedule, lines }: Plan, program: Program) {
  if ('none' in schedule) return { none: schedule.none.code, ...reasons(schedule.none) };
  const at: Moment =
    schedule.clock === 'dated' ? (minute) => isoTime(program.zone, minute) : (minute) => minute;
  return { ...figures(schedule, at), jobs: schedule.jobs.map((job) => jobJson(job, lines[job.line]!, at)) };
}

function reasons({
  variant,
  facts,
}: {
  readonly variant?: string;
  readonly facts: Readonly<Record<string, string>>;
}) {
  return { ...(variant ? { variant } : {}), facts };
}

function figures(schedule: PlannedSchedule, at: Moment) {
  const { start, firstHandsOn, ready, makespan, lowerBound, buildTime, leadTime, handsOn } = schedule;
  return {
    start: at(start),
    firstHandsOn: at(firstHandsOn),
    ready: at(ready),
    makespan: printDuration(makespan),
    lowerBound: printDuration(lowerBound),
    buildTime: printDuration(buildTime),
    ...(leadTime === undefined ? {} : { leadTime: printDuration(leadTime) }),
    handsOn: printDuration(handsOn),
  };
}

function jobJson(job: PlannedJob, { guide, level }: PlannedLine, at: Moment) {
  const { step, run, models, start, end, waitEnd, people, builders, places, tools, stretches } = job;
  return {
    guide,
    ...(level === undefined ? {} : { level }),
    step,
    run,
    models,
    start: at(start),
    end: at(end),
    waitEnd: at(waitEnd),
    people,
    builders,
    places,
    tools,
    ...(stretches ? { stretches: stretches.map((stretch) => stretch.map(at)) } : {}),
  };
}
