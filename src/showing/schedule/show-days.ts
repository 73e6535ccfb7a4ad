import type { PlannedJob, PlannedLine, PlannedSchedule } from '../../core/plan/result.ts';
import { planWords } from '../../words/plan.ts';
import { fill, listed } from '../text/fill.ts';
import { someModels } from '../text/model-lists.ts';
import { lineAmong, stepName } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import type { ShownSchedule } from '../shown/shown-schedule.ts';
import { shown } from '../shown/shown.ts';
import { type Clock, dayOf, showDay, showMinutes, showMomentFrom, showTime } from '../text/times.ts';

/** A stretch of work without a break: one step, the same people, one run after the other. */
export interface Task {
  readonly line: number;
  readonly step: string;
  readonly builders: readonly number[];
  readonly from: number;
  readonly to: number;
  readonly jobs: readonly PlannedJob[];
  /** Whether the last of its jobs ends with it, and its wait begins. */
  readonly ends: boolean;
}

/** Each day with its rows in order of time; runs that follow each other are one row. */
export function dayLists(
  key: string,
  lines: readonly PlannedLine[],
  schedule: PlannedSchedule,
  clock: Clock,
): ShownSchedule['days'] {
  const tasks = tasksOf(schedule.jobs);
  const days = [...new Set(tasks.map(({ from }) => dayOf(from, clock)))];
  return days.map((day, i) => {
    const ofDay = tasks.filter(({ from }) => dayOf(from, clock) === day);
    return {
      day: shown(`${key}[${i}].day`, showDay(ofDay[0]!.from, clock)),
      rows: ofDay.map((task, j) => showTask(`${key}[${i}].rows[${j}]`, task, lines, clock)),
    };
  });
}

/** Jobs in order of start, those of one step and the same people joined where one begins as the other ends. */
export function tasksOf(jobs: readonly PlannedJob[]): readonly Task[] {
  const open = new Map<string, Task>();
  const done: Task[] = [];
  for (const task of jobs.flatMap(stretchesOf).sort(byTime)) {
    const who = [task.line, task.step, ...task.builders].join(' ');
    const before = open.get(who);
    if (before?.to === task.from) {
      open.set(who, {
        ...before,
        to: task.to,
        jobs: [...new Set([...before.jobs, ...task.jobs])],
        ends: task.ends,
      });
    } else {
      if (before) done.push(before);
      open.set(who, task);
    }
  }
  return [...done, ...open.values()].sort(byTime);
}

function stretchesOf(job: PlannedJob): readonly Task[] {
  const stretches = job.stretches ?? [[job.start, job.end] as const];
  return stretches
    .filter(([from, to]) => to > from)
    .map(([from, to]) => ({
      line: job.line,
      step: job.step,
      builders: job.builders,
      from,
      to,
      jobs: [job],
      ends: to === job.end,
    }));
}

function byTime(a: Task, b: Task): number {
  return a.from - b.from || a.to - b.to || (a.builders[0] ?? 0) - (b.builders[0] ?? 0) || a.line - b.line;
}

function showTask(
  key: string,
  task: Task,
  lines: readonly PlannedLine[],
  clock: Clock,
): ShownSchedule['days'][number]['rows'][number] {
  return {
    from: shown(`${key}.from`, showTime(task.from, clock)),
    to: shown(`${key}.to`, showMomentFrom(task.from, task.to, clock)),
    who: shown(`${key}.who`, whoText(task.builders)),
    line: task.line,
    of: shown(`${key}.of`, lineAmong(lines, task.line)),
    what: shown(`${key}.what`, whatText(task, lines[task.line]!)),
    then: shown(`${key}.then`, thenText(task, lines, clock)),
  };
}

export function whoText(builders: readonly number[]): string {
  const { schedule } = planWords;
  if (builders.length === 0) return schedule.nobody;
  if (builders.length === 1) return fill(schedule.who, { n: showCount(builders[0]!) });
  return fill(schedule.whoTogether, { list: listed(builders.map(showCount)) });
}

/** "Spray the pads, models 1–6", "Fit the bases, all 12". */
export function whatText({ step, jobs }: Task, line: PlannedLine): string {
  const { schedule } = planWords;
  const name = stepName(line.at, step);
  if (line.made === 1) return fill(schedule.what, { step: name });
  const models = [...new Set(jobs.flatMap((job) => job.models))].sort((a, b) => a - b);
  return fill(schedule.whatModels, { step: name, models: someModels(models, line.made) });
}

/** What happens when hands leave: "then waits 4 h, until 14:10". Empty where nothing waits. */
function thenText(task: Task, lines: readonly PlannedLine[], clock: Clock): string {
  const waits = task.jobs.filter(({ end, waitEnd }) => waitEnd > end && end <= task.to);
  const last = waits.at(-1);
  if (!last || !task.ends) return '';
  const { schedule } = planWords;
  const watched = lines[task.line]!.at.steps.find(({ id }) => id === task.step)?.watched ?? false;
  const several = new Set(waits.map(({ waitEnd }) => waitEnd)).size > 1;
  const single = watched ? schedule.thenWatched : schedule.then;
  const sentence = several ? (watched ? schedule.thenWatchedLast : schedule.thenLast) : single;
  return fill(sentence, {
    time: showMinutes(last.waitEnd - last.end),
    until: showMomentFrom(task.from, Math.max(...waits.map(({ waitEnd }) => waitEnd)), clock),
  });
}
