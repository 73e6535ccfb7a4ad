import { Bug } from '../../diagnostic.ts';

/** A stretch of work that needs so many people at once. */
export interface Work {
  readonly start: number;
  readonly end: number;
  readonly people: number;
  /** Which task it is: work of one number is one task. */
  readonly task: number;
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
  const tasks = [...new Set(works.map(({ task }) => task))];
  const most = works.reduce((sum, work) => sum + work.people, 0);
  const crew = crewOf(Math.min(people, most), tasks.length);
  const numberOf = new Map(tasks.map((task, number) => [task, number]));
  for (const { task } of works) crew.left[numberOf.get(task)!]!++;
  return works.map((work) => {
    const chosen = Array.from({ length: work.people }, () => {
      const person = choose(crew, work.start, numberOf.get(work.task)!);
      if (person < 0) throw new Bug('more people at once than there are', { ...work });
      crew.freeFrom[person] = Infinity;
      crew.task[person] = numberOf.get(work.task)!;
      return person;
    });
    for (const person of chosen) crew.freeFrom[person] = work.end;
    crew.left[numberOf.get(work.task)!]!--;
    return chosen.map((person) => person + 1).sort((a, b) => a - b);
  });
}

/** People by number, from 0, and tasks by number, from 0. */
export interface Crew {
  readonly freeFrom: Float64Array;
  /** The task in hand; -1 for whoever has had none. */
  readonly task: Int32Array;
  /** Pieces of work that are left of each task. */
  readonly left: Int32Array;
}

export function crewOf(people: number, tasks: number): Crew {
  return {
    freeFrom: new Float64Array(people).fill(-Infinity),
    task: new Int32Array(people).fill(-1),
    left: new Int32Array(tasks),
  };
}

/**
 * The next one for a task: of those who are free whoever is at it already, else has no task left, else is in the middle
 * of another; -1 where nobody is free.
 */
export function choose({ freeFrom, task, left }: Crew, start: number, wanted: number): number {
  let [first, least] = [-1, Infinity];
  for (let person = 0; person < freeFrom.length && least > 0; person++) {
    if (freeFrom[person]! > start) continue;
    const inHand = task[person]!;
    const rank = inHand === wanted ? 0 : inHand < 0 || left[inHand] === 0 ? 1 : 2;
    if (rank < least) [first, least] = [person, rank];
  }
  return first;
}
