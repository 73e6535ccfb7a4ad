import { describe, expect, it } from 'vitest';
import { prepare } from '../../../../src/core/solve/schedule/ground/prepared.ts';
import type { Lag, ScheduleProblem } from '../../../../src/core/solve/schedule/problem.ts';

const day = { open: [[540, 1020]], every: 1440 } as const;

/** Two cuts of 10 min by one builder, unless said otherwise. */
function twoCuts(more: Partial<ScheduleProblem> = {}): ScheduleProblem {
  return { durations: [10, 10], lags: [], demands: [[1], [1]], capacities: [1], ...more };
}
/** Which of the blocks of a problem look for room in the same way, by the first job of each. */
function likeness(problem: ScheduleProblem): number[] {
  const { blocks, blockOf, likeOf } = prepare(problem);
  const numbers = problem.durations.map((_, job) => likeOf[blockOf[job]!]!);
  expect(likeOf).toHaveLength(blocks.length);
  return numbers.map((number) => numbers.indexOf(number));
}

describe('jobs that look for room alike', () => {
  it('are as long and need the same, whatever comes before them', () => {
    expect(likeness(twoCuts())).toEqual([0, 0]);
    expect(likeness(twoCuts({ lags: [[0, 1, 5]] }))).toEqual([0, 0]);
    expect(likeness(twoCuts({ releases: [0, 60] }))).toEqual([0, 0]);
  });

  it.each<[what: string, more: Partial<ScheduleProblem>]>([
    ['length', { durations: [10, 11] }],
    ['need', { demands: [[1], [0]] }],
    ['hours', { calendars: [day], calendarOf: [0, -1] }],
    ['pauses at closing time', { calendars: [day], calendarOf: [0, 0], splits: [true, false] }],
    ['run into the night', { calendars: [day], calendarOf: [0, 0], startsOnly: [true, false] }],
    ['vapour', { exclusions: [{ one: [{ job: 0, after: 30 }], other: [] }] }],
    ['amount', { capacities: [2], demands: [[2], [1]] }],
    [
      'place',
      {
        capacities: [1, 1],
        demands: [
          [1, 0],
          [0, 1],
        ],
      },
    ],
    [
      'side of the vapour',
      { exclusions: [{ one: [{ job: 0, after: 30 }], other: [{ job: 1, after: 30 }] }] },
    ],
    [
      'time to clear',
      {
        exclusions: [
          {
            one: [
              { job: 0, after: 30 },
              { job: 1, after: 20 },
            ],
            other: [],
          },
        ],
      },
    ],
    [
      'part in a hold: one takes the tin, one gives it back',
      { holds: [{ resource: 0, count: 1, from: [[0, 'start']], to: [[1, 'end']] }] },
    ],
    [
      'number of tins',
      {
        capacities: [2],
        holds: [0, 1].map((job) => ({
          resource: 0,
          count: 1 + job,
          from: [[job, 'start']],
          to: [[job, 'end']],
        })),
      },
    ],
    ['tin', { holds: [{ resource: 0, count: 1, from: [[0, 'start']], to: [[0, 'end']] }] }],
  ])('differ by their %s', (_, more) => {
    expect(likeness(twoCuts(more))).toEqual([0, 1]);
  });

  it('are blocks tied in the same way, their first jobs and their second ones', () => {
    // melt and pour within 45 min, twice; the third pour may come 60 min after its melt
    const within = (melt: number, pour: number, minutes: number) =>
      [
        [melt, pour, 10],
        [pour, melt, -minutes],
      ] as const;
    const problem: ScheduleProblem = {
      durations: [10, 5, 10, 5, 10, 5],
      lags: [...within(0, 1, 45), ...within(2, 3, 45), ...within(4, 5, 60)],
      demands: [[1], [1], [1], [1], [1], [1]],
      capacities: [1],
    };
    expect(likeness(problem)).toEqual([0, 0, 0, 0, 4, 4]);
  });

  it('are alike in what they hold, wherever it is given back', () => {
    const holds = [0, 1].map(
      (job) => ({ resource: 0, count: 1, from: [[job, 'start']], to: [[1, 'end']] }) as const,
    );
    expect(likeness(twoCuts({ holds: [{ ...holds[0]!, to: [[0, 'end']] }, holds[1]!] }))).toEqual([0, 0]);
  });

  it('are not blocks of which only the jobs are alike', () => {
    // in the second the pour may come at once
    const lags: Lag[] = [[0, 1, 10], [1, 0, -45], [2, 3, 0], [3, 2, -45]]; // prettier-ignore
    const problem = twoCuts({ durations: [10, 5, 10, 5], demands: [[1], [1], [1], [1]], lags });
    expect(likeness(problem)).toEqual([0, 0, 2, 2]);
    expect(likeness({ ...problem, lags: lags.with(2, [2, 3, 10]) })).toEqual([0, 0, 0, 0]);
    const other = lags.with(2, [2, 3, 10, 'start', 'end']);
    expect(likeness({ ...problem, lags: other })).toEqual([0, 0, 2, 2]);
  });
});
