import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { feasible } from '../../../../src/core/solve/schedule/feasible.ts';
import { mirrored, mirroredResult, mirroredTimes } from '../../../../src/core/solve/schedule/mirrored.ts';
import type { ScheduleProblem } from '../../../../src/core/solve/schedule/problem.ts';
import { schedule } from '../../../../src/core/solve/schedule/schedule.ts';
import { randomProblem } from './random-problem.ts';
import { runs } from './runs.ts';

const nothing = { durations: [], lags: [], demands: [], capacities: [] };

describe('the mirror image of a problem', () => {
  it('turns a lag round and swaps its edges', () => {
    // pour begins 60 min after melt has ended; backwards melt begins 60 min after pour has ended
    const problem: ScheduleProblem = {
      ...nothing,
      durations: [10, 5],
      demands: [[], []],
      lags: [
        [0, 1, 60, 'end', 'start'],
        [1, 0, -90, 'end', 'end'],
        [0, 1, 7],
      ],
    };
    expect(mirrored(problem).lags).toEqual([
      [1, 0, 60, 'end', 'start'],
      [0, 1, -90, 'start', 'start'],
      [1, 0, 7, 'end', 'end'],
    ]);
  });

  it('turns the hours of a day round, and those of a week that repeats', () => {
    // 9 to 12 and 13 to 17 before minute 24 is 7 to 11 and 12 to 15 after it
    const calendars = [
      {
        open: [
          [9, 12],
          [13, 17],
        ] as const,
      },
      { open: [[2, 5]] as const, every: 10 },
    ];
    expect(mirrored({ ...nothing, calendars }, 24).calendars).toEqual([
      {
        open: [
          [7, 11],
          [12, 15],
        ],
      },
      { open: [[19, 22]], every: 10 },
    ]);
  });

  it('makes a latest end an earliest start, and begins where the last job must have ended', () => {
    const problem = {
      ...nothing,
      durations: [4, 4],
      demands: [[], []],
      releases: [0, 3],
      deadlines: [12, 20],
    };
    expect(mirrored(problem, 20)).toMatchObject({ from: 0, releases: [8, 0], deadlines: [20, 17] });
    expect(mirrored(problem)).toMatchObject({ from: -20, releases: [-12, -20], deadlines: [0, -3] });
  });

  it('makes a machine that starts in hours one that ends in hours, and time to clear time to keep clear', () => {
    const problem = {
      ...nothing,
      durations: [4],
      demands: [[]],
      startsOnly: [true],
      exclusions: [{ one: [{ job: 0, after: 30 }], other: [{ job: 0, after: 0, before: 5 }] }],
    };
    expect(mirrored(problem)).toMatchObject({
      startsOnly: [],
      endsOnly: [true],
      exclusions: [{ one: [{ job: 0, after: 0, before: 30 }], other: [{ job: 0, after: 5, before: 0 }] }],
    });
  });

  it('says which way time runs', () => {
    expect(mirrored(nothing)).toMatchObject({ reversed: true });
    expect(mirrored(mirrored(nothing))).toMatchObject({ reversed: false });
  });

  it('has a schedule that is as late here as it is early there', () => {
    // melt 10, then 60 of cooling, then cut 20, all by minute 200: melt from 110
    const problem: ScheduleProblem = {
      durations: [10, 20],
      demands: [[1], [1]],
      capacities: [1],
      lags: [[0, 1, 60, 'end', 'start']],
      deadlines: [200, 200],
    };
    expect(mirroredResult(schedule(mirrored(problem, 200)), 200)).toMatchObject({
      starts: [110, 180],
      ends: [120, 200],
      makespan: 90,
      optimal: true,
    });
  });
});

/** Problems in which what only mirrors have turns up as well. */
const anyProblem = randomProblem({ jobs: 4, minutes: 4 }).chain((problem) =>
  fc
    .record({
      endsOnly: fc.array(fc.boolean(), {
        minLength: problem.durations.length,
        maxLength: problem.durations.length,
      }),
      from: fc.integer({ min: -8, max: 3 }),
      before: fc.nat(2),
      at: fc.integer({ min: -5, max: 30 }),
    })
    .map(({ endsOnly, from, before, at }) => ({
      at,
      problem: {
        ...problem,
        from,
        endsOnly: endsOnly.map((only, job) => only && !problem.startsOnly?.[job]),
        exclusions: (problem.exclusions ?? []).map(({ one, other }) => ({
          one: one.map((member) => ({ ...member, before })),
          other,
        })),
      },
    })),
);

/** Any starts, and ends that are right more often than not. */
const anyTimes = (problem: ScheduleProblem) =>
  fc
    .array(
      fc.record({ start: fc.integer({ min: -8, max: 24 }), longer: fc.constantFrom(0, 0, 0, 0, 1, 3) }),
      {
        minLength: problem.durations.length,
        maxLength: problem.durations.length,
      },
    )
    .map((jobs) => ({
      starts: jobs.map(({ start }) => start),
      ends: jobs.map(({ start, longer }, job) => {
        const minutes = problem.durations[job]!;
        return start + minutes + (minutes > 0 ? longer : 0);
      }),
    }));

const anySchedule = anyProblem.chain(({ problem, at }) =>
  anyTimes(problem).map((times) => ({ problem, at, times })),
);

describe('whatever the problem', () => {
  it('a schedule keeps its rules exactly if its mirror image keeps those of the mirror', () => {
    let kept = 0;
    fc.assert(
      fc.property(anySchedule, ({ problem, at, times }) => {
        const isFeasible = feasible(problem, times);
        if (isFeasible) kept++;
        expect(feasible(mirrored(problem, at), mirroredTimes(times, at))).toBe(isFeasible);
      }),
      { numRuns: runs(4000) },
    );
    expect(kept).toBeGreaterThan(runs(50));
  });

  it('a schedule that was found keeps the rules of the mirror too', () => {
    let found = 0;
    fc.assert(
      fc.property(anyProblem, ({ problem, at }) => {
        const result = schedule(problem);
        if (!('starts' in result)) return;
        found++;
        expect(feasible(mirrored(problem, at), mirroredTimes(result, at))).toBe(true);
      }),
      { numRuns: runs(300) },
    );
    expect(found).toBeGreaterThan(runs(50));
  });

  it('is not thrown off by a hold to a job for which its calendar has no time', () => {
    // hours 3 to 5 and 8 to 10, and none after that
    const problem: ScheduleProblem = {
      durations: [0, 3, 3],
      lags: [
        [1, 0, -2],
        [2, 0, -6, 'start', 'end'],
        [2, 0, 4],
        [1, 2, -1, 'end', 'start'],
      ],
      demands: [
        [1, 0],
        [1, 1],
        [2, 0],
      ],
      capacities: [3, 1],
      calendars: [
        {
          open: [
            [3, 5],
            [8, 10],
          ],
        },
        { open: [[3, 5]], every: 7 },
      ],
      calendarOf: [1, 1, 0],
      splits: [true, false, false],
      startsOnly: [false, false, true],
      endsOnly: [false, true, false],
      releases: [0, 0, 2],
      holds: [
        {
          resource: 1,
          count: 1,
          from: [[1, 'start']],
          to: [
            [0, 'end'],
            [0, 'start'],
          ],
        },
      ],
      exclusions: [
        {
          one: [{ job: 0, after: 0 }],
          other: [
            { job: 1, after: 0, before: 2 },
            { job: 2, after: 1, before: 1 },
          ],
        },
      ],
      kinds: [0, 2, 0],
      crew: 0,
      budget: 60,
    };
    expect(schedule(problem)).toHaveProperty('notFound');
  });

  it('twice mirrored it means the same as before', () => {
    fc.assert(
      fc.property(anySchedule, ({ problem, at, times }) => {
        const twice = mirrored(mirrored(problem, at), at);
        expect(feasible(twice, times)).toBe(feasible(problem, times));
        expect(twice.durations).toEqual(problem.durations);
        expect(mirroredTimes(mirroredTimes(times, at), at)).toEqual(times);
      }),
      { numRuns: runs(2000) },
    );
  });
});
