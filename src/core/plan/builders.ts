import { Bug } from '../diagnostic.ts';

/** A stretch of work that needs so many people at once. */
export interface Work {
  readonly start: number;
  readonly end: number;
  readonly people: number;
  /** Which task it is: runs of one step of one line are one task. */
  readonly task: number;
}

interface Builder {
  readonly number: number;
  freeFrom: number;
  task: number | undefined;
}

/**
 * Who does what: for each piece of work its builders, numbered from 1. A builder stays at the task in hand as long as
 * there is more of it; for a new task whoever has nothing left of the old one comes first, then whoever has the lower
 * number.
 *
 *     pads |=1=|=1=|=1=|   gel |=2==|=2==|       and not   pads |=1=|=2=|=1=|   gel |=2==|=1==|
 *
 * @param works     Sorted by start; never more people at once than there are builders.
 * @throws {Bug} When there are.
 */
export function assignBuilders(works: readonly Work[], builders: number): readonly (readonly number[])[] {
  const all: Builder[] = Array.from({ length: builders }, (_, i) => ({
    number: i + 1,
    freeFrom: -Infinity,
    task: undefined,
  }));
  const left = new Map<number, number>();
  for (const { task } of works) left.set(task, (left.get(task) ?? 0) + 1);
  return works.map((work) => {
    const free = all
      .filter(({ freeFrom }) => freeFrom <= work.start)
      .sort((a, b) => rank(a, work, left) - rank(b, work, left));
    const chosen = free.slice(0, work.people);
    if (chosen.length < work.people)
      throw new Bug('more people at once than there are builders', { ...work });
    for (const builder of chosen) Object.assign(builder, { freeFrom: work.end, task: work.task });
    left.set(work.task, left.get(work.task)! - 1);
    return chosen.map(({ number }) => number).sort((a, b) => a - b);
  });
}

/** Lower comes first: at this task already, with no task left, in the middle of another. */
function rank({ number, task }: Builder, work: Work, left: ReadonlyMap<number, number>): number {
  if (task === work.task) return number;
  const isDone = task === undefined || left.get(task) === 0;
  return (isDone ? 1 : 2) * many + number;
}
const many = 1_000_000;
