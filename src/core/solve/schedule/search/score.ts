import { choose, crewOf } from '../crew.ts';
import type { Ground } from '../ground/ground.ts';
import type { Times } from '../mirrored.ts';

/** Times of a schedule, job by job, as they are on a board too. */
interface TimesOf {
  readonly starts: ArrayLike<number>;
  readonly ends: ArrayLike<number>;
}

/**
 * How good a schedule is; less is better, the first number first: minutes past deadlines; the end, in thousandths of
 * the bound above it; changes of task; the end to the minute; the sum of all starts.
 *
 *     bound 10,000   ends 10,009 and 10,000: no difference, fewer changes win;   ends 10,010: worse than both
 */
export type Score = readonly [
  late: number,
  thousandths: number,
  changes: number,
  end: number,
  starts: number,
];

/** A schedule and how good it is. */
export interface Scored extends Times {
  readonly score: Score;
}

/** What judges schedules of one ground. */
export interface Judge {
  /** @param worst  The changes of a schedule that is worse already by its end are not counted: `Infinity`. */
  readonly score: (times: TimesOf, worst?: Score) => Score;
  /** Of the schedule scored last, for each job of the crew: the how-manieth block of one kind in one hand it is in. */
  readonly blockOf: Int32Array;
}

export function judgeOf(ground: Ground): Judge {
  const { deadlines, from } = ground.prepared;
  const { changesOf, blockOf } = changesOfTask(ground);
  const score = (times: TimesOf, worst?: Score): Score => {
    const { starts, ends } = times;
    let [late, end, sum] = [0, from, 0];
    for (let job = 0; job < starts.length; job++) {
      const minute = ends[job]!;
      if (minute > deadlines[job]!) late += minute - deadlines[job]!;
      if (minute > end) end = minute;
      sum += starts[job]!;
    }
    const thousandths = Math.max(1, Math.ceil(((end - ground.bound) * 1000) / thousand(ground)));
    const isWorse = worst && (late - worst[0] || thousandths - worst[1]) > 0;
    return [
      late,
      thousandths,
      isWorse ? Infinity : changesOf(times),
      end,
      ground.problem.latest ? -sum : sum,
    ];
  };
  return { score, blockOf };
}

/** The latest end that is no worse than that of a score. */
export function latestEnd(ground: Ground, [, thousandths]: Score): number {
  return ground.bound + Math.floor((thousandths * thousand(ground)) / 1000);
}

function thousand({ bound, prepared }: Ground): number {
  return Math.max(1, bound - prepared.from);
}

/** Below zero where `a` is the better, by its first `numbers`. */
export function compareScores(a: Score, b: Score, numbers = 5): number {
  for (let at = 0; at < numbers; at++) if (a[at] !== b[at]) return a[at]! - b[at]!;
  return 0;
}

/**
 * What counts how often somebody goes on with another kind of job than the one before; all are one where there is no
 * crew. Jobs that begin at once come by their numbers, as where people are named. It uses the same lists again and again.
 */
function changesOfTask({ problem, prepared }: Ground): {
  changesOf: (times: TimesOf) => number;
  blockOf: Int32Array;
} {
  const { crew, demands, capacities } = problem;
  const { kinds, isCrew, durations, from } = prepared;
  const counts = (job: number): boolean => isCrew[job]! && kinds[job]! >= 0 && durations[job]! > 0;
  const counted = [...durations.keys()].filter(counts);
  const people = counted.map((job) => (crew === undefined ? 1 : demands[job]![crew]!));
  const most = people.reduce((sum, count) => sum + count, 0);
  const persons = crew === undefined ? 1 : Math.min(capacities[crew]!, most);
  const { task, freeFrom, left } = crewOf(persons, counted.length);
  const inHand = new Int32Array(persons);
  const blockOf = new Int32Array(durations.length);
  const inOrder = new Float64Array(counted.length);
  const changesOf = ({ starts, ends }: TimesOf): number => {
    task.fill(-1);
    freeFrom.fill(-Infinity);
    left.fill(0);
    counted.forEach((job, at) => {
      left[kinds[job]!]!++;
      inOrder[at] = (starts[job]! - from) * counted.length + at;
    });
    inOrder.sort();
    let [changes, blocks] = [0, 0];
    for (const key of inOrder) {
      const at = key % counted.length;
      const job = counted[at]!;
      const kind = kinds[job]!;
      for (let chosen = 0; chosen < people[at]!; chosen++) {
        const person = crew === undefined ? 0 : choose({ task, freeFrom, left }, starts[job]!, kind);
        if (task[person] !== kind) {
          if (task[person]! >= 0) changes++;
          inHand[person] = blocks++;
        }
        task[person] = kind;
        freeFrom[person] = ends[job]!;
        blockOf[job] = inHand[person]!;
      }
      left[kind]!--;
    }
    return changes;
  };
  return { changesOf, blockOf };
}
