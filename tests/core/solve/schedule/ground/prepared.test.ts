import { describe, expect, it } from 'vitest';
import { Bug } from '../../../../../src/core/diagnostic.ts';
import { groundOf } from '../../../../../src/core/solve/schedule/ground/ground.ts';
import { prepare } from '../../../../../src/core/solve/schedule/ground/prepared.ts';
import type { ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';

const problem: ScheduleProblem = {
  durations: [5, 5, 0, 5],
  lags: [],
  demands: [
    [1, 2],
    [0, 0],
    [1, 1],
    [2, 0],
  ],
  capacities: [2, 3],
};
const with_ = (more: Partial<ScheduleProblem>): ScheduleProblem => ({ ...problem, ...more });

describe('what is no problem of scheduling', () => {
  it.each<[what: string, more: Partial<ScheduleProblem>]>([
    ['needs of more jobs than there are', { demands: [[1], [1], [1], [1], [1]] }],
    ['less than no time', { durations: [5, -1, 0, 5] }],
    ['half a minute', { durations: [5, 0.5, 0, 5] }],
    ['a lag to a job that is not there', { lags: [[0, 4, 1]] }],
    ['a lag from a job that is not there', { lags: [[-1, 0, 1]] }],
    ['a lag of half a job', { lags: [[0.5, 1, 1]] }],
    ['a lag of no length', { lags: [[0, 1, NaN]] }],
    ['an endless lag', { lags: [[0, 1, Infinity]] }],
  ])('is our own fault: %s', (_, more) => {
    expect(() => prepare(with_(more))).toThrow(Bug);
  });

  it('is told apart from what is unusual', () => {
    expect(() => prepare(with_({ lags: [[0, 3, -7], [3, 0, 0]] }))).not.toThrow(); // prettier-ignore
  });
});

describe('what a job needs', () => {
  it('leaves others the rest; one of no length needs nothing', () => {
    expect(prepare(problem).needs).toEqual([
      [
        { usage: 0, count: 1, room: 1 },
        { usage: 1, count: 2, room: 1 },
      ],
      [],
      [],
      [{ usage: 0, count: 2, room: 0 }],
    ]);
  });

  it('tells who belongs to the crew: all where there is none', () => {
    expect(prepare(problem).isCrew).toEqual([true, true, true, true]);
    expect(prepare(with_({ crew: 0 })).isCrew).toEqual([true, false, true, true]);
    expect(prepare(with_({ crew: 1 })).isCrew).toEqual([true, false, true, false]);
  });
});

describe('kinds', () => {
  it('are numbered from 0 in their order, without gaps; below zero, or left out, does not count', () => {
    expect(prepare(with_({ kinds: [7, -3, 40, 7] })).kinds).toEqual([0, -1, 1, 0]);
    expect(prepare(with_({ kinds: [40, 7] })).kinds).toEqual([1, 0, -1, -1]);
    expect(prepare(problem).kinds).toEqual([-1, -1, -1, -1]);
  });

  it('bring at least as many changes of task as there are more of them than people', () => {
    const least = (more: Partial<ScheduleProblem>): unknown => {
      const ground = groundOf(with_({ durations: [5, 5, 5, 5], demands: problem.durations.map(() => [1]), capacities: [2], ...more })); // prettier-ignore
      return 'leastChanges' in ground && ground.leastChanges;
    };
    const kinds = [0, 1, 2, 3];
    expect(least({ kinds, crew: 0 })).toBe(2);
    expect(least({ kinds })).toBe(3);
    expect(least({ kinds: [0, 0, 0, 1], crew: 0 })).toBe(0);
    expect(least({ kinds, crew: 0, demands: [[1], [1], [1], [0]] })).toBe(1);
    expect(least({ kinds, crew: 0, durations: [5, 5, 5, 0] })).toBe(1);
    expect(least({ kinds: [0, 1, 2, -1], crew: 0 })).toBe(1);
  });
});

describe('holds', () => {
  const hold = { resource: 1, count: 2, from: [[0, 'start']], to: [[3, 'end']] } as const;
  it('touch the jobs of their moments, by number', () => {
    const { holds, holdsOf } = prepare(with_({ holds: [hold, { ...hold, from: [[3, 'end']] }] }));
    expect(holds).toEqual([
      { usage: 1, count: 2, room: 1, from: [0], to: [4 + 3] },
      { usage: 1, count: 2, room: 1, from: [4 + 3], to: [4 + 3] },
    ]);
    expect(holdsOf).toEqual([[0], [], [], [0, 1]]);
  });

  it('of nothing, or without a beginning or an end, are none', () => {
    const none = [
      { ...hold, count: 0 },
      { ...hold, from: [] },
      { ...hold, to: [] },
    ];
    expect(prepare(with_({ holds: none }))).toMatchObject({ holds: [], holdsOf: [[], [], [], []] });
  });

  it('of more than there is are impossible where they certainly last, and else are not', () => {
    const tooMany = { ...hold, count: 4 };
    expect(groundOf(with_({ holds: [tooMany], lags: [[0, 3, 0]] }))).toEqual({
      impossible: { because: 'capacity', jobs: [0, 3], resource: 1 },
    });
    // nothing says that job 3 ends after job 0 begins
    expect(groundOf(with_({ holds: [tooMany] }))).toHaveProperty('bound');
  });
});

describe('exclusions', () => {
  it('have two sides, each with marks of its own that the other must not meet', () => {
    const exclusions = [
      { one: [{ job: 0, after: 30 }], other: [{ job: 1, after: 0, before: 5 }] },
      { one: [{ job: 1, after: 1 }], other: [] },
    ];
    const { apart, usages } = prepare(with_({ exclusions }));
    expect(usages).toBe(2 + 2 * 2);
    expect(apart).toEqual([
      [{ mine: 2, theirs: 3, before: 0, after: 30 }],
      [
        { mine: 3, theirs: 2, before: 5, after: 0 },
        { mine: 4, theirs: 5, before: 0, after: 1 },
      ],
      [],
      [],
    ]);
  });
});

describe('releases and deadlines', () => {
  it('are never before the first minute, and endless where left out', () => {
    expect(prepare(with_({ from: 10, releases: [5, 15], deadlines: [50] }))).toMatchObject({
      from: 10,
      releases: [10, 15, 10, 10],
      deadlines: [50, Infinity, Infinity, Infinity],
    });
    expect(prepare(problem)).toMatchObject({ from: 0, releases: [0, 0, 0, 0] });
  });
});
