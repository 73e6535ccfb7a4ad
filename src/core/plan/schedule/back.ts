import { assignCrew } from '../../solve/schedule/crew.ts';
import type { Calendar } from '../../solve/schedule/problem.ts';
import { jobTools } from './job-tools.ts';
import type { PlannedJob } from '../result.ts';
import type { Scheduled, ToSchedule } from './schedule-runs.ts';

/** A schedule as runs of guides: who does what with which tools, and when its wait is over. In order of start. */
export function plannedJobs(
  { lines, builders, clock }: Pick<ToSchedule, 'lines' | 'builders' | 'clock'>,
  { jobs: { runs }, starts, ends }: Pick<Scheduled, 'jobs' | 'starts' | 'ends'>,
): readonly PlannedJob[] {
  const toDo = runs.flatMap(({ past }, job) => (past ? [] : [job]));
  const inOrder = toDo.sort((a, b) => starts[a]! - starts[b]!);
  const tasks = [...new Set(runs.map(({ step }) => step))];
  const works = inOrder.map((job) => {
    const { people, step } = runs[job]!;
    return { start: starts[job]!, end: ends[job]!, people, task: tasks.indexOf(step) };
  });
  const crews = assignCrew(works, builders);
  const shift = (minute: number): number => minute + clock.origin;
  return inOrder.map((job, i) => {
    const { line, step, run, models, people, handsOn, wait } = runs[job]!;
    const [start, end] = [starts[job]!, ends[job]!];
    const stretches = end - start > handsOn ? stretchesOf(clock.calendar, start, end) : undefined;
    return {
      line,
      step: step.id,
      run: run + 1,
      models,
      start: shift(start),
      end: shift(end),
      waitEnd: shift(end + wait),
      people,
      builders: crews[i]!,
      places: step.at,
      tools: jobTools(lines[line]!.at, step, models),
      ...(stretches ? { stretches: stretches.map(([from, to]) => [shift(from), shift(to)] as const) } : {}),
    };
  });
}

/** The open time between two minutes: hands-on that pauses at closing is done in these stretches. */
export function stretchesOf(
  { open, every }: Calendar,
  start: number,
  end: number,
): (readonly [number, number])[] {
  const found: [number, number][] = [];
  const [first, last] = every === undefined ? [0, 0] : [Math.floor(start / every), Math.floor(end / every)];
  for (let period = first; period <= last; period++) {
    const shift = period * (every ?? 0);
    for (const [from, to] of open) {
      const [opens, closes] = [Math.max(start, from + shift), Math.min(end, to + shift)];
      const before = found.at(-1);
      if (opens >= closes) continue;
      if (before?.[1] === opens) before[1] = closes;
      else found.push([opens, closes]);
    }
  }
  return found;
}
