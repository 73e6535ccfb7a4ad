import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyBoard, put, timesOn } from '../../../../../src/core/solve/schedule/ground/board.ts';
import { basisOf, type Basis } from '../../../../../src/core/solve/schedule/ground/ground.ts';
import { lastsUntil } from '../../../../../src/core/solve/schedule/ground/ways-through.ts';
import type { Edge, Lag, ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';
import { randomProblem } from '../random-problem.ts';
import { runs } from '../runs.ts';

function basis(problem: ScheduleProblem): Basis {
  const found = basisOf(problem);
  if ('impossible' in found) throw new Error(JSON.stringify(found));
  return found;
}
/** Until when the first hold lasts that begins with a job that starts at a minute. */
function until(problem: ScheduleProblem, job: number, start: number): number {
  const ground = basis(problem);
  const board = emptyBoard(ground);
  put(board, job, start);
  const before = timesOn(board);
  const minute = lastsUntil(ground.ways[0]![0]!, board);
  expect(timesOn(board)).toEqual(before);
  return minute;
}
/** Jobs of 10 min, each followed by the next after 5 min; a tin is held from the first to the last. */
function chain(jobs: number, more: Partial<ScheduleProblem> = {}): ScheduleProblem {
  const all = [...Array(jobs).keys()];
  return {
    durations: all.map(() => 10),
    lags: all.slice(1).map((job): Lag => [job - 1, job, 5, 'end', 'start']),
    demands: all.map(() => [0]),
    capacities: [1],
    holds: [{ resource: 0, count: 1, from: [[0, 'start']], to: [[jobs - 1, 'end']] }],
    ...more,
  };
}
const hours = (jobs: number) => ({
  calendars: [{ open: [[0, 35] as const], every: 100 }],
  calendarOf: Array.from({ length: jobs }, () => 0),
});

describe('how long a tin is held at least', () => {
  it('is the way through all between, and over night where they keep hours', () => {
    expect(until(chain(3), 0, 7)).toBe(7 + 10 + 5 + 10 + 5 + 10);
    // 0–10, 15–25, and the next day 100–110
    expect(until(chain(3, hours(3)), 0, 0)).toBe(110);
    // 20–30, 100–110, 115–125
    expect(until(chain(3, hours(3)), 0, 20)).toBe(125);
  });
  it('counts from when hands leave where it is taken only then', () => {
    const late = {
      holds: [{ resource: 0, count: 1, from: [[0, 'end'] as const], to: [[2, 'start'] as const] }],
    };
    expect(basis(chain(3, late)).ways[0]![0]).toMatchObject({ minutes: 5 + 10 + 5, jobs: [1, 2] });
    expect(until(chain(3, late), 0, 7)).toBe(7 + 10 + 5 + 10 + 5);
  });
  it('is that of the last of several moments', () => {
    const two = { holds: [{ resource: 0, count: 1, from: [[0, 'start'] as const], to: [[1, 'end'], [2, 'start']] as const }] }; // prettier-ignore
    expect(basis(chain(3, two)).ways[0]![0]!.minutes).toBe(30);
    expect(until(chain(3, two), 0, 7)).toBe(37);
  });
  it('is followed job by job over 12 jobs, and by lags alone over more', () => {
    expect(basis(chain(12)).ways[0]![0]!.jobs).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
    expect(basis(chain(13)).ways[0]![0]).toMatchObject({ jobs: [], minutes: 13 * 15 - 5 });
  });
  it('leaves aside what only comes before, after, or beside it', () => {
    // 3 goes before the last too, 4 after it, 5 after the first
    const more = chain(3, {
      durations: [10, 10, 10, 7, 7, 7],
      demands: Array.from({ length: 6 }, () => [0]),
    });
    const lags: Lag[] = [...more.lags, [3, 2, 0], [2, 4, 0], [0, 5, 0], [2, 1, -90]];
    expect(basis({ ...more, lags }).ways[0]![0]!.jobs).toEqual([1, 2]);
  });
  it('is not known where nothing leads from its beginning to its end', () => {
    expect(basis(chain(3, { lags: [] })).ways[0]![0]).toMatchObject({ minutes: -Infinity, jobs: [] });
    expect(until(chain(3, { lags: [] }), 0, 7)).toBe(-Infinity);
  });
  it('is at least by lags where hours end in between', () => {
    const ending = { ...hours(3), calendars: [{ open: [[0, 45] as const] }] };
    expect(until(chain(3, { ...ending, calendarOf: [-1, -1, 0] }), 0, 20)).toBe(20 + 40);
  });
});

it('agrees with the earliest starts of all that the beginning pushes', () => {
  let seen = 0;
  const anyChain = randomProblem({ jobs: 5, minutes: 5 }).chain((problem) => {
    const last = problem.durations.length - 1;
    const [from, to] = [fc.constantFrom<Edge>('start', 'end'), fc.constantFrom<Edge>('start', 'end')];
    return fc.record({ from, to, later: fc.nat(9) }).map(({ from, to, later }) => ({
      later,
      to,
      problem: {
        ...problem,
        demands: problem.durations.map(() => [0]),
        capacities: [1],
        lags: [
          ...problem.lags.filter(([i, j]) => i < j).map(([i, j, least]): Lag => [i, j, Math.abs(least)]),
          [0, last, 1] as const,
        ].filter(([i, j]) => i !== j),
        deadlines: [],
        exclusions: [],
        holds: [{ resource: 0, count: 1, from: [[0, from]], to: [[last, to]] }],
      } satisfies ScheduleProblem,
    }));
  });
  fc.assert(
    fc.property(anyChain, ({ problem, to, later }) => {
      const last = problem.durations.length - 1;
      const ground = basisOf(problem);
      if ('impossible' in ground || last === 0) return;
      const start = ground.prepared.times[0]!.start(ground.earliest[0]! + later);
      const releases = [start, ...problem.durations.slice(1).map((_, job) => problem.releases?.[job + 1] ?? problem.from!)]; // prettier-ignore
      const pushed = start === Infinity ? undefined : basisOf({ ...problem, releases });
      if (!pushed || 'impossible' in pushed) return;
      seen++;
      const end = pushed.earliest[last]!;
      expect(until(problem, 0, start)).toBe(to === 'start' ? end : pushed.prepared.times[last]!.end(end));
    }),
    { numRuns: runs(600) },
  );
  expect(seen).toBeGreaterThan(runs(200));
});
