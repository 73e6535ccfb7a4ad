import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atOnce } from '../../../../src/core/in-pieces.ts';
import { assignCrew } from '../../../../src/core/solve/schedule/crew.ts';
import { feasible } from '../../../../src/core/solve/schedule/feasible.ts';
import { mirrored, mirroredResult } from '../../../../src/core/solve/schedule/mirrored.ts';
import type { Lag, ScheduleProblem, ScheduleResult } from '../../../../src/core/solve/schedule/problem.ts';
import { schedule } from '../../../../src/core/solve/schedule/schedule.ts';
import { consecutive } from '../../../../src/core/solve/schedule/search/consecutive.ts';
import { runs } from './runs.ts';
import { scored, searchOf } from './search/search-of.ts';

/** So many pads , each cut (5 min), glued (3 min) and, once it has dried overnight, trimmed (4 min), step after step by number. */
function pads(models: number, builders: number): ScheduleProblem {
  const minutes = [5, 3, 4];
  const durations = minutes.flatMap((each) => Array.from({ length: models }, () => each));
  const lags = Array.from({ length: models }, (_, model): Lag[] => [
    [model, models + model, 0, 'end', 'start'],
    [models + model, 2 * models + model, 150, 'end', 'start'],
  ]).flat();
  const kinds = durations.map((_, job) => Math.floor(job / models));
  const demands = durations.map(() => [1]);
  const hours = {
    calendars: [
      {
        open: [
          [0, 100],
          [300, 400],
        ] as const,
      },
    ],
    calendarOf: durations.map(() => 0),
  };
  return {
    ...hours,
    durations,
    lags,
    kinds,
    demands,
    capacities: [builders],
    crew: 0,
    placements: 8000,
  };
}

/** What each of the crew does, block by block: the numbers of the models of one step after the other. */
function blocksOf(problem: ScheduleProblem, { starts, ends }: Extract<ScheduleResult, { starts: unknown }>) {
  const models = problem.durations.length / 3;
  const order = [...starts.keys()].sort((a, b) => starts[a]! - starts[b]! || a - b);
  const works = order.map((job) => ({
    start: starts[job]!,
    end: ends[job]!,
    people: 1,
    task: problem.kinds![job]!,
  }));
  const blocks = new Map<number, number[][]>();
  const last = new Map<number, number>();
  assignCrew(works, problem.capacities[0]!).forEach(([person], at) => {
    const own = blocks.get(person!) ?? [];
    blocks.set(person!, own);
    if (last.get(person!) !== works[at]!.task) own.push([]);
    last.set(person!, works[at]!.task);
    own.at(-1)!.push(order[at]! % models);
  });
  return [...blocks.values()].flat();
}
const runsOn = (numbers: readonly number[]): boolean =>
  numbers.every((number, at) => at === 0 || number === numbers[at - 1]! + 1);

describe('the numbers of like runs', () => {
  it('run on in each block of somebody’s work', () => {
    for (const builders of [1, 2, 3]) {
      const problem = pads(12, builders);
      const result = schedule(problem);
      if (!('starts' in result)) throw new Error(JSON.stringify(result));
      expect(feasible(problem, result)).toBe(true);
      expect(blocksOf(problem, result).filter((block) => !runsOn(block))).toEqual([]);
    }
  });

  it('rise from earlier to later where all is planned backwards, too', () => {
    const problem = { ...pads(12, 1), deadlines: Array.from({ length: 36 }, () => 400) };
    const result = mirroredResult(schedule(mirrored(problem)));
    if (!('starts' in result)) throw new Error(JSON.stringify(result));
    expect(feasible(problem, result)).toBe(true);
    expect(blocksOf(problem, result).filter((block) => !runsOn(block))).toEqual([]);
  });

  it('break no rule for it, whatever the jobs have to wait for', () => {
    const wait = fc.tuple(fc.nat(17), fc.nat(17), fc.integer({ min: -40, max: 20 }));
    fc.assert(
      fc.property(fc.array(wait, { maxLength: 5 }), fc.integer({ min: 1, max: 2 }), (waits, builders) => {
        const plain = pads(6, builders);
        const more = waits.filter(([from, to]) => from < to);
        const problem = { ...plain, lags: [...plain.lags, ...more], placements: 500 };
        const result = schedule(problem);
        if ('starts' in result) expect(feasible(problem, result)).toBe(true);
      }),
      { numRuns: runs(60) },
    );
  });
});

describe('jobs that are alike change places', () => {
  const after = (i: number, j: number): Lag => [i, j, 0, 'end', 'start'];
  /** Jobs of 10 min for so many builders, all of one kind unless said otherwise. */
  const tens = (count: number, builders: number, more: Partial<ScheduleProblem> = {}): ScheduleProblem => {
    const durations = Array.from({ length: count }, () => 10);
    const demands = durations.map(() => [1]);
    return {
      durations,
      demands,
      lags: [],
      capacities: [builders],
      crew: 0,
      kinds: durations.map(() => 0),
      ...more,
    };
  };
  const changed = (problem: ScheduleProblem, starts: readonly number[]): readonly number[] => {
    const search = searchOf(problem);
    return atOnce(consecutive(search, scored(search, starts))).starts;
  };
  const never = Infinity;

  it('so that numbers run on with each builder', () => {
    //   b1 |=2=|=3=|=4=|        b1 |=0=|=1=|=2=|
    //   b2 |=1=|=0=|=5=|   ->   b2 |=3=|=4=|=5=|
    expect(changed(tens(6, 2), [10, 0, 0, 10, 20, 20])).toEqual([0, 10, 20, 0, 10, 20]);
  });
  it('or else rise from earlier to later, where a deadline, a release or a lag to another job stands against that', () => {
    const byTime = [0, 0, 10, 10];
    expect(changed(tens(4, 2, { deadlines: [never, 10, never, never] }), [10, 0, 0, 10])).toEqual(byTime);
    expect(changed(tens(4, 2, { releases: [0, 0, 10, 0] }), [0, 0, 10, 10])).toEqual(byTime);
    const glue = tens(5, 3, { kinds: [0, 0, 0, 0, 1], lags: [after(1, 4)] });
    expect(changed(glue, [10, 0, 0, 10, 10])).toEqual([...byTime, 10]);
  });
  it('or not at all, where nothing else keeps every rule', () => {
    expect(changed(tens(2, 1, { deadlines: [never, 10] }), [10, 0])).toEqual([10, 0]);
    expect(changed(tens(2, 1, { releases: [10, 0] }), [10, 0])).toEqual([10, 0]);
  });
  it('but not where more would be held than there is', () => {
    // One mould, held from pour 0 to trim 2 (12 min), and from pour 1 to trim 3; job 4 needs it from 20 to 30. Pour 0 at
    // 30 holds it only then; at 0 it would hold it all the time.
    const problem: ScheduleProblem = {
      durations: [10, 10, 12, 10, 10],
      lags: [],
      demands: [[1, 0], [1, 0], [1, 0], [1, 0], [0, 1]],
      capacities: [1, 1],
      crew: 0,
      kinds: [0, 0, 1, 1, 2],
      holds: [0, 1].map((pour) => ({ resource: 1, count: 1, from: [[pour, 'start']], to: [[pour + 2, 'end']] })),
    }; // prettier-ignore
    expect(changed(problem, [30, 0, 40, 10, 20])).toEqual([30, 0, 40, 10, 20]);
  });
  it('but not where somebody would change task more often', () => {
    // Melt and, at once, pour gel (0, 1) or wax (2, 3); more gel (4) and more wax (5). Which melt comes first is all one,
    // but what is poured then is not. Two covers (6, 7) are free.
    const problem = tens(8, 1, {
      kinds: [0, 1, 0, 2, 1, 2, 3, 3],
      lags: [after(0, 1), [1, 0, 0, 'start', 'end'], after(2, 3), [3, 2, 0, 'start', 'end']],
    });
    const work = [30, 40, 0, 10, 50, 20];
    expect(changed(problem, [...work, 70, 60])).toEqual([...work, 60, 70]);
  });

  // Four cut by two builders, and each glued 20 min after its cut has begun: no cut may move without its glue.
  const glued = tens(8, 2, {
    kinds: [0, 0, 0, 0, 1, 1, 1, 1],
    lags: [0, 1, 2, 3].flatMap((cut): Lag[] => [[cut, cut + 4, 20]]),
  });
  it('step by step alike where one step could not alone', () => {
    expect(changed(glued, [10, 0, 0, 10, 30, 20, 20, 30])).toEqual([0, 10, 0, 10, 20, 30, 20, 30]);
  });
  it('in one step at least, where another cannot', () => {
    // cuts 1 and 2 must be done by 10 and their glues by 30, so that all these stay; the four trims are free, or the
    // second must be done by 50
    const work = [10, 0, 0, 10, 30, 20, 20, 30];
    const trims = (second: number): readonly number[] => {
      const kinds = [...glued.kinds!, 2, 2, 2, 2];
      const deadlines = [never, 10, 10, never, never, 30, 30, never, never, second, never, never];
      const problem = tens(12, 2, { kinds, lags: glued.lags, deadlines });
      const starts = changed(problem, [...work, 50, 40, 40, 50]);
      expect(starts.slice(0, 8)).toEqual(work);
      return starts.slice(8);
    };
    expect(trims(never)).toEqual([40, 50, 40, 50]);
    expect(trims(50)).toEqual([40, 40, 50, 50]);
  });
  it('where a wait goes with the work before it', () => {
    // Mix (0), warm up (1, nobody's work), then four casts (2 to 5) by two builders, each with its setting (6 to 9), which
    // is nobody's work and comes after mix and warm-up too.
    const settings = [6, 7, 8, 9];
    const problem = tens(10, 2, {
      kinds: [1, 0, 0, 0, 0, 0, 0, 0, 0, 0],
      durations: [10, 5, 10, 10, 10, 10, 10, 10, 10, 10],
      demands: [[1], [0], [1], [1], [1], [1], [0], [0], [0], [0]],
      lags: settings.flatMap((setting) => [
        after(0, setting),
        after(1, setting),
        after(setting - 4, setting),
      ]),
    });
    expect(changed(problem, [0, 0, 20, 10, 10, 20, 30, 20, 20, 30])).toEqual([
      0, 0, 10, 20, 10, 20, 20, 30, 20, 30,
    ]);
  });
});
