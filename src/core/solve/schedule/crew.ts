import { Bug } from '../../diagnostic.ts';

/** A stretch of work that needs so many people at once. */
export interface Work {
  readonly start: number;
  readonly end: number;
  readonly people: number;
  /** Which task it is: work of one number is one task. */
  readonly task: number;
}

interface Person {
  readonly number: number;
  freeFrom: number;
  task: number | undefined;
}

/**
 * Who does what: for each piece of work its people, numbered from 1. A person stays at the task in hand as long as
 * there is more of it; for a new task whoever has nothing left of the old one comes first, then whoever has the lower
 * number.
 *
 *     pads |=1=|=1=|=1=|   gel |=2==|=2==|       and not   pads |=1=|=2=|=1=|   gel |=2==|=1==|
 *
 * @param works  Sorted by start; never more people at once than there are.
 * @throws {Bug} When there are.
 */
export function assignCrew(works: readonly Work[], people: number): readonly (readonly number[])[] {
  const left = new Map<number, number>();
  for (const { task } of works) left.set(task, (left.get(task) ?? 0) + 1);
  const most = works.reduce((sum, work) => sum + work.people, 0);
  const all: Person[] = Array.from({ length: Math.min(people, most) }, (_, index) => ({
    number: index + 1,
    freeFrom: -Infinity,
    task: undefined,
  }));
  return works.map((work) => {
    const chosen: Person[] = [];
    while (chosen.length < work.people) chosen.push(firstChoice(all, work, chosen, left));
    for (const person of chosen) [person.freeFrom, person.task] = [work.end, work.task];
    left.set(work.task, left.get(work.task)! - 1);
    return chosen.map(({ number }) => number).sort((a, b) => a - b);
  });
}

/** Of those who are free: who is at this task already, else has no task left, else is in the middle of another. */
function firstChoice(
  all: readonly Person[],
  work: Work,
  chosen: readonly Person[],
  left: ReadonlyMap<number, number>,
): Person {
  let [first, least]: [Person | undefined, number] = [undefined, Infinity];
  for (const person of all) {
    if (person.freeFrom > work.start || chosen.includes(person)) continue;
    const { task } = person;
    const rank = task === work.task ? 0 : task === undefined || left.get(task) === 0 ? 1 : 2;
    if (rank < least) [first, least] = [person, rank];
  }
  if (!first) throw new Bug('more people at once than there are', { ...work });
  return first;
}
