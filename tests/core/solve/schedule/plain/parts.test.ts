import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Draw } from '../../../../../src/core/solve/draw.ts';
import { crossed } from '../../../../../src/core/solve/schedule/plain/crossover.ts';
import { heads, tails } from '../../../../../src/core/solve/schedule/plain/heads-and-tails.ts';
import { inOrder } from '../../../../../src/core/solve/schedule/plain/in-order.ts';
import { scheduler } from '../../../../../src/core/solve/schedule/plain/justify.ts';
import { leastLags } from '../../../../../src/core/solve/schedule/plain/least-lags.ts';
import { setsOneAtATime } from '../../../../../src/core/solve/schedule/plain/one-at-a-time.ts';
import { plainBound } from '../../../../../src/core/solve/schedule/plain/plain-bound.ts';
import { join } from '../../../../../src/core/solve/schedule/plain/population.ts';
import { mirrored, projectOf } from '../../../../../src/core/solve/schedule/plain/project.ts';
import { serialPass, type Pass } from '../../../../../src/core/solve/schedule/plain/serial-pass.ts';
import { shift } from '../../../../../src/core/solve/schedule/plain/shift.ts';
import type { Lag, ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';
import { runs } from '../runs.ts';
import { plainProblem } from './plain-problems.ts';

const minutes = (...all: number[]): Float64Array => Float64Array.from(all);
const after = (i: number, j: number, least = 0): Lag => [i, j, least, 'end', 'start'];
/** Jobs at one bench with room for so many at once. */
function atBench(
  room: number,
  durations: readonly number[],
  more: Partial<ScheduleProblem> = {},
): ScheduleProblem {
  return { durations, lags: [], demands: durations.map(() => [1]), capacities: [room], ...more };
}

describe('lags from start to start', () => {
  it('count the minutes of a job where they go from its end, or to it', () => {
    const lags: Lag[] = [[0, 1, 2], [0, 1, 2, 'start', 'start'], [0, 1, 2, 'end', 'start'], [0, 1, 2, 'start', 'end'], [0, 1, 2, 'end', 'end']]; // prettier-ignore
    const least = leastLags({ ...atBench(1, [10, 3]), lags }).map((lag) => lag.least);
    expect(least).toEqual([2, 2, 12, -1, 9]);
  });

  it('of a job to itself say something only where they cannot be kept', () => {
    const lags: Lag[] = [[0, 0, 0], [0, 0, -4], [0, 0, 5]]; // prettier-ignore
    expect(leastLags({ ...atBench(1, [10]), lags })).toEqual([{ from: 0, to: 0, least: 5 }]);
  });
});

describe('jobs in order', () => {
  it('come each after all that they wait for', () => {
    const lags = [after(3, 1), after(1, 0), after(3, 0), after(2, 0)];
    expect(inOrder(atBench(1, [1, 1, 1, 1], { lags }))).toEqual([2, 3, 1, 0]);
  });

  it('have none where some wait for each other', () => {
    expect(inOrder(atBench(1, [1, 1, 1], { lags: [after(0, 1), after(1, 2), after(2, 1)] }))).toBeUndefined();
  });
});

describe('a project', () => {
  const problem = atBench(2, [4, 0, 5, 3], {
    demands: [[2, 0], [2, 2], [0, 1], [1, 1]], // prettier-ignore
    capacities: [2, 1],
    lags: [[2, 0, 3], [3, 2, 1]], // prettier-ignore
    from: 10,
    releases: [5, 10, 12, 10],
  });
  const project = projectOf(problem);

  it('has its jobs in order, its minutes from the first one on, and its needs by name', () => {
    // 1 and 3 wait for nobody; 2 for 3; 0 for 2
    expect(project).toEqual({
      jobs: [1, 3, 2, 0],
      durations: minutes(0, 3, 5, 4),
      releases: minutes(0, 0, 2, 0),
      waits: [[], [], [{ job: 1, least: 1 }], [{ job: 2, least: 3 }]],
      needs: [
        [], // a job of no length needs nothing
        [{ resource: 0, count: 1 }, { resource: 1, count: 1 }], // prettier-ignore
        [{ resource: 1, count: 1 }],
        [{ resource: 0, count: 2 }],
      ],
      capacities: minutes(2, 1),
    });
  });

  it('has for each job the earliest start, and the least time from there to the end of all', () => {
    // 3 at 0, 2 at 2 (1 after it, but released at 2), 0 at 5
    expect(heads(project)).toEqual(minutes(0, 0, 2, 5));
    // 0 takes 4; 2 takes 5, or 3 and then 0: 7; 3 takes 3, or 1 and then 2: 8
    expect(tails(project)).toEqual(minutes(0, 8, 7, 4));
    expect([project.releases, project.durations]).toEqual([minutes(0, 0, 2, 0), minutes(0, 3, 5, 4)]);
  });

  it('turned round has the last job first, and lags that end with what they began with', () => {
    // 3 starts 1 before 2, which ends so 1 - 3 + 5 after it; 2 starts 3 before 0, which ends 3 - 5 + 4 after it
    const turned = mirrored(project);
    expect(turned).toMatchObject({
      jobs: [0, 2, 3, 1],
      durations: minutes(4, 5, 3, 0),
      releases: minutes(0, 0, 0, 0),
      waits: [[], [{ job: 0, least: 2 }], [{ job: 1, least: 3 }], []],
      needs: project.needs.toReversed(),
    });
    expect(mirrored(turned)).toEqual({ ...project, releases: minutes(0, 0, 0, 0) });
  });
});

describe('one pass', () => {
  const pass = (problem: ScheduleProblem, ...keys: number[]): readonly number[] => {
    const project = projectOf(problem);
    const { starts, end } = serialPass(project)(minutes(...project.jobs.map((job) => keys[job]!)));
    expect(end).toBe(Math.max(...starts.map((start, at) => start + project.durations[at]!)));
    return problem.durations.map((_, job) => starts[project.jobs.indexOf(job)]!);
  };

  it('places jobs by their keys, and by their numbers where those are the same', () => {
    const problem = atBench(1, [3, 2, 4]);
    expect(pass(problem, 0, 1, 2)).toEqual([0, 3, 5]);
    expect(pass(problem, 2, 1, 0)).toEqual([6, 4, 0]);
    expect(pass(problem, 1, 0, 0)).toEqual([6, 0, 2]);
  });

  it('lets a job into the first gap that is long enough', () => {
    // the bench is free from 2 to 5, and from 7 on
    const problem = atBench(1, [2, 2, 3, 4], { releases: [0, 5, 0, 0] });
    expect(pass(problem, 0, 1, 2, 3)).toEqual([0, 5, 2, 7]);
    expect(pass(problem, 0, 1, 3, 2)).toEqual([0, 5, 2, 7]);
    expect(pass(atBench(1, [2, 2, 4], { releases: [0, 5, 0] }), 0, 1, 2)).toEqual([0, 5, 7]);
    expect(pass(atBench(1, [2, 2, 2], { releases: [0, 5, 1] }), 0, 1, 2)).toEqual([0, 5, 2]);
  });

  it('places none before what it waits for, whatever the keys', () => {
    expect(pass(atBench(1, [3, 2, 4], { lags: [after(0, 1)] }), 5, 0, 1)).toEqual([4, 7, 0]);
  });

  it('begins each time with nothing placed', () => {
    const project = projectOf(atBench(1, [3, 2]));
    const once = serialPass(project);
    expect(once(minutes(0, 1))).toEqual({ starts: minutes(0, 3), end: 5 });
    for (let again = 0; again < 3; again++)
      expect(once(minutes(1, 0))).toEqual({ starts: minutes(2, 0), end: 5 });
    expect(once(minutes(0, 0))).toEqual({ starts: minutes(0, 3), end: 5 });
  });
});

describe('justification', () => {
  // at a bench for two, a 1 and b 1, c 3, and d 4 after a. In the order b, c, a, d: a 1–2, d 2–6; a first would be 5
  const project = projectOf(atBench(2, [1, 1, 3, 4], { lags: [after(0, 3)] }));
  const inTurn = minutes(2, 0, 1, 3);

  it('takes two passes more, and never ends later than what it began with', () => {
    const plain = serialPass(project)(inTurn);
    const { schedule } = scheduler(project, 3);
    expect(plain).toEqual({ starts: minutes(1, 0, 0, 2), end: 6 });
    // to the end: d 2–6, c 3–6, a 1–2, b 2–3; and back: a 0–1, b 0–1, d 1–5, c 1–4
    expect(schedule(inTurn, Infinity)).toEqual({ starts: minutes(0, 0, 1, 1), end: 5 });
  });

  it('is left out where no two passes are left, or the schedule ends too late for it', () => {
    expect(scheduler(project, 2).schedule(inTurn, Infinity).end).toBe(6);
    expect(scheduler(project, 99).schedule(inTurn, 5).end).toBe(6);
    expect(scheduler(project, 99).schedule(inTurn, 6).end).toBe(5);
  });

  it('is spent when so many passes have been made', () => {
    const { schedule, isSpent } = scheduler(project, 4);
    const spent = [isSpent()];
    for (const keys of [inTurn, inTurn]) {
      schedule(keys, Infinity); // three passes, then the last one
      spent.push(isSpent());
    }
    expect(spent).toEqual([false, false, true]);
  });

  it('makes no schedule longer, and keeps every lag', () => {
    fc.assert(
      fc.property(plainProblem({ jobs: 12, minutes: 9 }), (problem) => {
        const own = projectOf(problem);
        const keys = own.durations.map((_, job) => (job * 7) % 5);
        const before = serialPass(own)(keys);
        const { starts, end } = scheduler(own, 3).schedule(keys, Infinity);
        expect(end).toBeLessThanOrEqual(before.end);
        own.waits.forEach((waits, job) => {
          for (const { job: other, least } of waits)
            expect(starts[job]).toBeGreaterThanOrEqual(starts[other]! + least);
        });
      }),
      { numRuns: runs(100) },
    );
  });
});

/** Draws these numbers, each of them below what is asked for. */
const drawing = (...numbers: number[]): Draw => {
  let at = 0;
  return (below) => {
    const number = numbers[at++ % numbers.length]!;
    expect(number).toBeLessThan(below);
    return number;
  };
};

describe('a child of two schedules', () => {
  // of 100 min; each has its five jobs in an order of its own
  const one: Pass = { starts: minutes(0, 20, 40, 60, 80), end: 100 };
  const other: Pass = { starts: minutes(81, 61, 41, 21, 1), end: 100 };

  it.each<[string, number, number, number[]]>([
    ['a fifth of its time at the beginning', 0, 0, [0, 20, 41, 21, 1]],
    ['a fifth at the end', 0, 100, [81, 61, 41, 21, 80]],
    ['two fifths in the middle: 30 to 70', 20, 50, [81, 61, 40, 60, 1]],
    ['three fifths at the end', 40, 100, [81, 61, 40, 60, 80]],
  ])('follows one for %s', (_, length, from, keys) => {
    expect(crossed(one, other, drawing(length, from))).toEqual(minutes(...keys));
  });

  it('has its keys shifted for jobs near each other, at most as far as they lie apart', () => {
    // four jobs and 100 min; a window for 4: 50 either side of the middle; shifts of -100, 0, 50 and 100
    const keys = minutes(0, 49, 100, 101);
    shift(keys, 100, drawing(500, 0, 0, 1000, 1500, 2000));
    expect(keys).toEqual(minutes(-100, 49, 150, 101));
    // forty jobs: 100 x (4 + 25) / 80 = 36.25 either side of the end
    const many = minutes(...Array.from({ length: 40 }, (_, job) => job * 2));
    shift(many, 100, drawing(1000, 25, ...Array.from({ length: 40 }, () => 2000)));
    const moved = [...many].map((key, job) => key - job * 2);
    expect(moved).toEqual([...many.keys()].map((job) => (job * 2 >= 63.75 ? 72.5 : 0)));
  });
});

describe('a population', () => {
  const member = (end: number, first: number): Pass => ({ starts: minutes(first, 5), end });
  it('takes in what is new, and lets the oldest of the worst go when it is full', () => {
    const all: Pass[] = [];
    for (const child of [member(9, 0), member(7, 1), member(9, 2)]) join(all, child, 3);
    join(all, member(9, 0), 3);
    join(all, member(7, 1), 3);
    expect(all.map(({ end, starts }) => [end, starts[0]])).toEqual([[9, 0], [7, 1], [9, 2]]); // prettier-ignore
    join(all, member(7, 0), 3);
    expect(all.map(({ end, starts }) => [end, starts[0]])).toEqual([[7, 1], [9, 2], [7, 0]]); // prettier-ignore
    join(all, member(8, 2), 3);
    join(all, member(99, 2), 3);
    expect(all.map(({ end, starts }) => [end, starts[0]])).toEqual([[7, 1], [7, 0], [8, 2]]); // prettier-ignore
  });
});

describe('what no schedule is shorter than', () => {
  it('jobs that need more together than there is follow one another', () => {
    // two of three places each: one at a time, though 6 of 9 place-minutes would fit into 3
    const problem = { durations: [1, 2, 1], lags: [], demands: [[2], [2], [2]], capacities: [3] };
    expect(setsOneAtATime(projectOf(problem))).toEqual([[1, 0, 2], [0, 1, 2], [2, 1, 0]]); // prettier-ignore
    expect(plainBound(problem)).toBe(4);
  });

  it('a job is one at a time with what it waits for the end of, directly or not, and with no other', () => {
    const problem: ScheduleProblem = {
      durations: [3, 2, 2, 0],
      // 1 after 0, 2 after 1 has begun: 3 + 1 after 0 has begun, which has ended then
      lags: [after(0, 1), [1, 2, 1], after(2, 3)],
      demands: [[], [], [], []],
      capacities: [],
    };
    expect(setsOneAtATime(projectOf(problem))).toEqual([[0, 1], [1, 0], [2, 0]]); // prettier-ignore
    const sooner: ScheduleProblem = { ...problem, lags: [[0, 1, 1], [1, 2, 1], after(2, 3)] }; // prettier-ignore
    expect(setsOneAtATime(projectOf(sooner))).toEqual([[0], [1], [2]]);
  });

  it('work that waits for one bench comes after the first head and before the last tail', () => {
    // three jobs of 4 at two benches, none before 5; after each of them 3 min of drying: 5 + 12 / 2 + 3
    const drying = atBench(2, [4, 4, 4, 3, 3, 3], {
      demands: [[1], [1], [1], [0], [0], [0]],
      lags: [after(0, 3), after(1, 4), after(2, 5)],
      releases: [5, 5, 5, 0, 0, 0],
    });
    expect(plainBound(drying)).toBe(14);
    // begun later, of which there is less: 9 + 4 and no drying
    expect(plainBound(atBench(2, [4, 4, 4], { releases: [0, 0, 9] }))).toBe(13);
    // five jobs of 2 min that take two of four benches: 20 bench-minutes
    expect(plainBound(atBench(4, [2, 2, 2, 2, 2], { demands: [[2], [2], [2], [2], [2]] }))).toBe(5);
    // half a minute of two benches is a whole one
    expect(plainBound(atBench(2, [3, 3, 3]))).toBe(5);
  });
});
