import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assignCrew } from '../../../../src/core/solve/schedule/crew.ts';
import { feasible } from '../../../../src/core/solve/schedule/feasible.ts';
import { mirrored, mirroredResult } from '../../../../src/core/solve/schedule/mirrored.ts';
import type { Lag, ScheduleProblem, ScheduleResult } from '../../../../src/core/solve/schedule/problem.ts';
import { schedule } from '../../../../src/core/solve/schedule/schedule.ts';
import { runs } from './runs.ts';

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
