import { describe, expect, it } from 'vitest';
import { assignCrew } from '../../../../src/core/solve/schedule/crew.ts';
import { feasible } from '../../../../src/core/solve/schedule/feasible.ts';
import type { ScheduleProblem } from '../../../../src/core/solve/schedule/problem.ts';
import { schedule } from '../../../../src/core/solve/schedule/schedule.ts';

/** Two stretches a day, 09:00–12:30 and 13:00–17:00, every day. */
const day = {
  open: [
    [540, 750],
    [780, 1020],
  ],
  every: 1440,
} as const;

/** Jobs by their minutes, with nothing to share unless said, and some tries. */
function jobs(durations: readonly number[], rest: Partial<ScheduleProblem> = {}): ScheduleProblem {
  return { durations, lags: [], demands: durations.map(() => []), capacities: [], budget: 100, ...rest };
}

function solved(problem: ScheduleProblem) {
  const result = schedule(problem);
  if (!('starts' in result)) throw new Error(JSON.stringify(result));
  expect(feasible(problem, result)).toBe(true);
  return result;
}

describe('lags', () => {
  it('starts everything at 0 where nothing stands in the way, and knows that this is best', () => {
    expect(solved(jobs([5, 3]))).toEqual({
      starts: [0, 0],
      ends: [5, 3],
      makespan: 5,
      lowerBound: 5,
      optimal: true,
    });
  });
  it('has an empty answer to an empty problem', () => {
    expect(solved(jobs([]))).toEqual({ starts: [], ends: [], makespan: 0, lowerBound: 0, optimal: true });
  });
  it('keeps least lags from start to start, and between chosen edges', () => {
    // b starts 7 after a; c starts when b has ended; d ends no earlier than 20 after a ends
    const problem = jobs([5, 3, 1, 4], {
      lags: [
        [0, 1, 7],
        [1, 2, 0, 'end', 'start'],
        [0, 3, 20, 'end', 'end'],
      ],
    });
    expect(solved(problem).starts).toEqual([0, 7, 10, 21]);
  });
  it('moves a forerunner later when a greatest lag would break: poured within 45 min of melting', () => {
    // the only builder is away until 100: pouring waits for him, and so melting must wait too
    const problem = jobs([20, 10], {
      lags: [
        [0, 1, 0, 'end', 'start'],
        [1, 0, -45, 'start', 'end'],
      ],
      releases: [0, 100],
    });
    expect(solved(problem).starts).toEqual([35, 100]);
  });
  it('moves a forerunner later for the sake of a shared stove as well', () => {
    // a long job has the stove first by its index; melt and pour both need it and lie within 5 min of each other
    const problem = jobs([30, 10, 10], {
      lags: [
        [1, 2, 10],
        [2, 1, -15],
      ],
      demands: [[1], [1], [1]],
      capacities: [1],
    });
    expect(solved(problem).makespan).toBe(50);
  });
});

describe('calendars', () => {
  const at = (durations: readonly number[], rest: Partial<ScheduleProblem> = {}) =>
    jobs(durations, { calendars: [day], calendarOf: durations.map(() => 0), ...rest });

  it('puts a job into one stretch, not over lunch', () => {
    expect(solved(at([200], { releases: [560] })).starts).toEqual([780]);
  });
  it('splits a job that may pause at closing time, and keeps its place meanwhile', () => {
    const problem = at([30, 10], {
      splits: [true, false],
      releases: [740, 0],
      demands: [[1], [1]],
      capacities: [1],
      lags: [[0, 1, 0]],
    });
    const { starts, ends } = solved(problem);
    expect([starts, ends]).toEqual([
      [740, 800],
      [800, 810],
    ]);
  });
  it('lets a machine that starts while open run on at night', () => {
    expect(solved(at([600], { startsOnly: [true], releases: [1019] }))).toMatchObject({
      starts: [1019],
      ends: [1619],
    });
  });
  it('starts a machine no later than the last open minute', () => {
    expect(solved(at([600], { startsOnly: [true], releases: [1020] })).starts).toEqual([1440 + 540]);
  });
  it('lets a plain wait run through the night', () => {
    // cast 16:00–16:10, set 16 h until 08:10, unmould at opening
    const problem = jobs([10, 960, 5], {
      calendars: [day],
      calendarOf: [0, -1, 0],
      releases: [960],
      lags: [
        [0, 1, 0, 'end', 'start'],
        [1, 0, 0, 'start', 'end'],
        [1, 2, 0, 'end', 'start'],
      ],
    });
    expect(solved(problem).starts).toEqual([960, 970, 1440 + 540]);
  });
});

describe('problems that begin elsewhere', () => {
  it('starts nothing before `from`, which may lie before 0, and counts the makespan from there', () => {
    const shared = {
      demands: [[1], [1]],
      capacities: [1],
      calendars: [{ open: [[-50, 50]] }],
      calendarOf: [0, 0],
    };
    expect(solved(jobs([5, 5], { ...(shared as object), from: -60 }))).toMatchObject({
      makespan: 20,
      lowerBound: 20,
      optimal: true,
    });
  });
  it('lets a machine that must end while open begin before opening', () => {
    // the minute before its end, 540, is the first open one
    const problem = jobs([600], { calendars: [day], calendarOf: [0], endsOnly: [true], from: -500 });
    expect(solved(problem)).toMatchObject({ starts: [-59], ends: [541] });
  });
  it('keeps flame away for some time before vapour as well', () => {
    const problem = jobs([10, 10], {
      exclusions: [{ one: [{ job: 0, after: 0, before: 30 }], other: [{ job: 1, after: 0 }] }],
      releases: [5, 0],
    });
    // flame 0–10 and vapour not before 40; or vapour 5–15 and flame at 15
    expect(solved(problem)).toMatchObject({ starts: [5, 15], makespan: 25 });
  });
});

describe('resources, holds and exclusions', () => {
  it('shares out a resource from start to end', () => {
    // two of three fit beside each other: 2 rounds of 10
    expect(solved(jobs([10, 10, 10], { demands: [[1], [1], [1]], capacities: [2] }))).toMatchObject({
      makespan: 20,
    });
  });
  it('holds a mould from pouring to unmoulding, wait and all', () => {
    // one mould: pour 5, set 60, unmould 5; the second pouring waits until the first is unmoulded at 70
    const one = [5, 60, 5];
    const lags = [0, 3].flatMap((first) => [
      [first, first + 1, 0, 'end', 'start'] as const,
      [first + 1, first + 2, 0, 'end', 'start'] as const,
    ]);
    const problem = jobs([...one, ...one], {
      lags,
      demands: [...one, ...one].map(() => [0]),
      capacities: [1],
      holds: [0, 3].map((first) => ({
        resource: 0,
        count: 1,
        from: [[first, 'start']],
        to: [[first + 2, 'end']],
      })),
    });
    expect(solved(problem)).toMatchObject({ makespan: 140, lowerBound: 140, optimal: true });
  });
  it('holds from the earliest of several moments to the latest of others', () => {
    // the pot is held from 0 (job 0) to 30 (end of job 1): job 2, which needs it too, comes at 30
    const problem = jobs([10, 10, 5], {
      lags: [
        [0, 1, 20],
        [0, 2, 1],
      ],
      demands: [[0], [0], [1]],
      capacities: [1],
      holds: [
        {
          resource: 0,
          count: 1,
          from: [
            [1, 'start'],
            [0, 'start'],
          ],
          to: [
            [0, 'end'],
            [1, 'end'],
          ],
        },
      ],
    });
    expect(solved(problem).starts[2]).toBe(30);
  });
  it('puts short holds into a gap before a later one that is placed already', () => {
    // job 0 holds from 50 on; job 1 holds for 10 min and fits before, whoever comes first in line
    const problem = jobs([10, 10], {
      releases: [50, 0],
      demands: [[0], [0]],
      capacities: [1],
      holds: [0, 1].map((job) => ({ resource: 0, count: 1, from: [[job, 'start']], to: [[job, 'end']] })),
    });
    expect(solved(problem)).toMatchObject({ starts: [50, 0], makespan: 60 });
  });
  it('takes two moulds for a job that fills one of its own while it holds another', () => {
    const own = { demands: [[1], [0]], capacities: [1], lags: [[0, 1, 10]] } as const;
    const holds = [{ resource: 0, count: 1, from: [[0, 'start']], to: [[1, 'end']] }] as const;
    expect(schedule(jobs([5, 5], { ...own, holds }))).toMatchObject({
      notFound: { because: 'capacity', resource: 0 },
    });
    expect(solved(jobs([5, 5], { ...own, holds, capacities: [2] })).starts).toEqual([0, 10]);
  });
  it('keeps vapour and flame apart until the vapour has cleared, and lets two of a kind overlap', () => {
    const problem = jobs([10, 10, 10, 10], {
      exclusions: [
        {
          one: [
            { job: 0, after: 30 },
            { job: 1, after: 30 },
          ],
          other: [
            { job: 2, after: 0 },
            { job: 3, after: 0 },
          ],
        },
      ],
    });
    // flames first: 0–10, then both sprays 10–20
    expect(solved(problem).makespan).toBe(20);
    const flameLast = { ...problem, releases: [0, 0, 10, 10] };
    expect(solved(flameLast).makespan).toBe(30);
  });
});

describe('what cannot be is said with its cause', () => {
  it.each<[string, ScheduleProblem, object]>([
    [
      'lags that go round in a circle: a wait of 60 min within a limit of 45',
      jobs([10, 5], {
        lags: [
          [0, 1, 70],
          [1, 0, -55],
        ],
      }),
      { because: 'lags', jobs: [0, 1] },
    ],
    [
      'more places than there are',
      jobs([5], { demands: [[3]], capacities: [2] }),
      { because: 'capacity', jobs: [0], resource: 0 },
    ],
    [
      'a hold of more than there is',
      jobs([5], {
        demands: [[0]],
        capacities: [1],
        holds: [{ resource: 0, count: 2, from: [[0, 'start']], to: [[0, 'end']] }],
      }),
      { because: 'capacity', jobs: [0], resource: 0 },
    ],
    [
      'a job longer than every open stretch',
      jobs([241], { calendars: [day], calendarOf: [0] }),
      { because: 'calendar', jobs: [0] },
    ],
    [
      'a calendar that never opens',
      jobs([1], { calendars: [{ open: [] }], calendarOf: [0], splits: [true] }),
      { because: 'calendar', jobs: [0] },
    ],
    [
      'a window that is too small',
      jobs([5, 5], { lags: [[0, 1, 5]], deadlines: [Infinity, 9] }),
      { because: 'deadline', jobs: [1] },
    ],
    [
      'more work than fits before the last deadline',
      jobs([5, 5], { demands: [[1], [1]], capacities: [1], deadlines: [9, 9] }),
      { because: 'deadline', jobs: [0, 1], resource: 0 },
    ],
    [
      'hands off at night: hands-on that must follow within 1 h of a wait of 16 h',
      jobs([10, 960, 5], {
        calendars: [{ open: [[540, 780]], every: 1440 }],
        calendarOf: [0, -1, 0],
        lags: [
          [0, 1, 0, 'end', 'start'],
          [1, 0, 0, 'start', 'end'],
          [1, 2, 0, 'end', 'start'],
          [2, 1, -60, 'start', 'end'],
        ],
      }),
      { because: 'calendar', jobs: [0, 1, 2] },
    ],
  ])('%s', (_, problem, obstacle) => {
    expect(schedule(problem)).toEqual({ impossible: obstacle });
  });

  it('proves that no order will do, where trying all is no great work', () => {
    // two jobs that need the only place and may be no more than 5 min apart, in either order: each lasts 10
    const problem = jobs([10, 10], {
      lags: [
        [0, 1, -5],
        [1, 0, -5],
      ],
      demands: [[1], [1]],
      capacities: [1],
    });
    expect(schedule(problem)).toEqual({ impossible: { because: 'capacity', jobs: [0, 1], resource: 0 } });
  });
});

describe('among equally early schedules', () => {
  it('keeps jobs of one kind together', () => {
    const problem = jobs([5, 5, 5, 5, 5, 5], {
      demands: Array.from({ length: 6 }, () => [1]),
      capacities: [1],
      kinds: [0, 1, 0, 1, 0, 1],
    });
    const { starts } = solved(problem);
    const kinds = problem
      .kinds!.map((kind, job) => ({ kind, start: starts[job]! }))
      .sort((a, b) => a.start - b.start);
    expect(kinds.map(({ kind }) => kind)).toEqual([0, 0, 0, 1, 1, 1]);
  });
  it('counts changes for each of the crew, and lets a thousandth of the time go for fewer of them', () => {
    // two people, six pads and six lids of 100 min each; one pad can be begun only 1 min late: 601 in two rows of one
    // task each, while ending at 600 is impossible; mixed rows would end no earlier
    const durations = Array.from({ length: 12 }, () => 100);
    const problem = jobs(durations, {
      demands: durations.map(() => [1]),
      capacities: [2],
      crew: 0,
      kinds: durations.map((_, job) => job % 2),
      releases: durations.map((_, job) => (job < 2 ? 0 : 1)),
      calendars: [{ open: [[0, 5000]] }],
      calendarOf: durations.map(() => 0),
      placements: 20_000,
    });
    const { starts, ends } = solved(problem);
    const rows = assignCrew(
      [...durations.keys()]
        .sort((a, b) => starts[a]! - starts[b]!)
        .map((job) => ({ start: starts[job]!, end: ends[job]!, people: 1, task: job % 2 })),
      2,
    );
    const order = [...durations.keys()].sort((a, b) => starts[a]! - starts[b]!);
    for (const person of [1, 2])
      expect(new Set(order.filter((_, at) => rows[at]!.includes(person)).map((job) => job % 2)).size).toBe(1);
  });
  it('starts as late as it can without ending later, where that is wanted', () => {
    // 0 and 1 follow each other, 2 needs the other person only for the last 5 min
    const problem = jobs([10, 10, 5], {
      lags: [[0, 1, 0, 'end', 'start']],
      demands: [[1], [1], [1]],
      capacities: [2],
      crew: 0,
      kinds: [0, 1, 2],
      calendars: [{ open: [[0, 100]] }],
      calendarOf: [0, 0, 0],
      placements: 1_000,
    });
    expect(solved(problem).starts).toEqual([0, 10, 0]);
    expect(solved({ ...problem, latest: true }).starts).toEqual([0, 10, 15]);
  });
  it('starts as late as it can on a plain project, and where the shortest is proven by branching', () => {
    //     0 |----------|            2 must only be done by the end of 1, at 20
    //     1            |----------|
    const plain = jobs([10, 10, 5], { lags: [[0, 1, 0, 'end', 'start']] });
    expect(solved(plain).starts).toEqual([0, 10, 0]);
    expect(solved({ ...plain, latest: true }).starts).toEqual([0, 10, 15]);
    // 2 may begin 12 min after 0 at the latest, so no later than that
    const bound = { ...plain, lags: [...plain.lags, [2, 0, -12] as const], latest: true };
    expect(solved(bound)).toMatchObject({ starts: [0, 10, 12], makespan: 20, optimal: true });
  });
  it('finds an order in which the only builder never idles', () => {
    // 12 times cut 5 min, glue 3, and 40 min later trim 4: 12 x 12 = 144 min of work, which is the bound
    const models = [...Array(12).keys()];
    const problem = jobs(
      [5, 3, 4].flatMap((minutes) => models.map(() => minutes)),
      {
        lags: models.flatMap((model): ScheduleProblem['lags'] => [
          [model, 12 + model, 0, 'end', 'start'],
          [12 + model, 24 + model, 40, 'end', 'start'],
        ]),
        demands: [...models, ...models, ...models].map(() => [1]),
        capacities: [1],
        crew: 0,
        kinds: [0, 1, 2].flatMap((kind) => models.map(() => kind)),
        calendars: [{ open: [[0, 1000]] }],
        calendarOf: [...models, ...models, ...models].map(() => 0),
        budget: 20_000,
        placements: 40_000,
      },
    );
    expect(solved(problem)).toMatchObject({ makespan: 144, optimal: true });
  });
  it('gives the same schedule for the same problem', () => {
    const durations = [7, 3, 9, 4, 8, 2, 6, 5];
    const problem = jobs(durations, { demands: durations.map((_, job) => [1 + (job % 2)]), capacities: [3] });
    expect(schedule(problem)).toEqual(schedule(structuredClone(problem)));
  });
});
