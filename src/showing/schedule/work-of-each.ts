import type { Plan, PlannedSchedule } from '../../core/plan/result.ts';
import { plainSpaces } from '../text/fill.ts';
import { lineName } from '../text/names.ts';
import { type Task, tasksOf, whatText } from './show-days.ts';

/** A stretch of work of one builder, or of a machine, with its texts, for files that other programs read. */
export interface Work {
  readonly task: Task;
  readonly from: number;
  readonly until: number;
  /** Absent where a machine works. */
  readonly builder?: number;
  /** "Ultrasound needle block, Deep vessel" */
  readonly guide: string;
  /** "Spray the pads, models 1–12" */
  readonly work: string;
  /** When the last of what it leaves has waited its time. */
  readonly waitsUntil?: number;
}

/** The work of a plan in order of time: one entry for each builder of each stretch. */
export function workOfEach({ lines }: Plan, { jobs }: PlannedSchedule): readonly Work[] {
  return tasksOf(jobs).flatMap((task) => {
    const line = lines[task.line]!;
    const waits = task.jobs.filter(({ end, waitEnd }) => waitEnd > end && end <= task.to);
    const work = {
      task,
      from: task.from,
      until: task.to,
      guide: plainSpaces(lineName(line)),
      work: plainSpaces(whatText(task, line)),
      ...(waits.length > 0 ? { waitsUntil: Math.max(...waits.map(({ waitEnd }) => waitEnd)) } : {}),
    };
    return task.builders.length === 0 ? [work] : task.builders.map((builder) => ({ ...work, builder }));
  });
}
