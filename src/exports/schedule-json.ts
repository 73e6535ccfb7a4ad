import type { Program } from '../core/model/program.ts';
import type {
  ChainLink,
  LineReady,
  Load,
  NoSchedule,
  Plan,
  PlannedJob,
  PlannedLine,
  PlannedSchedule,
} from '../core/plan/result.ts';
import { printDuration } from '../core/time/minutes.ts';
import { changeJson } from './change-json.ts';
import { lineName } from './line-name.ts';
import { factsJson, type Moment, momentOn } from './moment.ts';

/** The schedule of a plan; why there is none, where there is none, and what would help. */
export function scheduleJson({ schedule, lines }: Plan, program: Program) {
  if ('none' in schedule) return noScheduleJson(schedule.none, lines, program);
  const at = momentOn(schedule.clock, program);
  return {
    ...figures(schedule, at),
    models: schedule.lines.flatMap((ready, index) => modelsJson(ready, lines[index]!, at)),
    chain: schedule.chain.map((link) => linkJson(link, schedule.jobs, lines)),
    loads: schedule.loads.map(loadJson),
    jobs: schedule.jobs.map((job) => jobJson(job, lines[job.line]!, at)),
  };
}

function noScheduleJson(
  { code, variant, facts, helps, clock }: NoSchedule,
  lines: readonly PlannedLine[],
  program: Program,
) {
  const at = momentOn(clock?.clock ?? 'reference-week', program);
  return {
    none: code,
    ...(variant ? { variant } : {}),
    facts: factsJson(facts, at),
    helps: helps.map(({ change, ready }) => ({ change: changeJson(change, lines), ready: at(ready) })),
  };
}

function figures(schedule: PlannedSchedule, at: Moment) {
  const { start, firstHandsOn, ready, readyBy, makespan, lowerBound, optimal, buildTime, leadTime, handsOn } =
    schedule;
  return {
    start: at(start),
    firstHandsOn: at(firstHandsOn),
    ready: at(ready),
    ...(readyBy === undefined ? {} : { readyBy: at(readyBy) }),
    makespan: printDuration(makespan),
    lowerBound: printDuration(lowerBound),
    optimal,
    buildTime: printDuration(buildTime),
    ...(leadTime === undefined ? {} : { leadTime: printDuration(leadTime) }),
    handsOn: printDuration(handsOn),
  };
}

/** Of each model made, when it is ready and until when it is good (left out where it keeps for ever). */
function modelsJson({ models }: LineReady, line: PlannedLine, at: Moment) {
  return models.map(({ ready, useBy }, index) => ({
    ...lineName(line),
    model: index + 1,
    ready: at(ready),
    ...(useBy === undefined ? {} : { useBy: at(useBy) }),
  }));
}

/** One run of those that decide the end, and what kept it from beginning earlier. */
function linkJson(
  { job, because, id }: ChainLink,
  jobs: readonly PlannedJob[],
  lines: readonly PlannedLine[],
) {
  const { line, step, run } = jobs[job]!;
  return { ...lineName(lines[line]!), step, run, because, ...(id === undefined ? {} : { id }) };
}

function loadJson({ kind, id, has, peak, minutes, available }: Load) {
  return {
    kind,
    ...(id === '' ? {} : { id }),
    has,
    peak,
    inUse: printDuration(minutes),
    available: printDuration(available),
  };
}

function jobJson(job: PlannedJob, line: PlannedLine, at: Moment) {
  const { step, run, models, start, end, waitEnd, people, builders, places, tools, stretches } = job;
  return {
    ...lineName(line),
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
