import { expect, it } from 'vitest';
import { brokenRules } from '../../../../src/core/solve/schedule/feasible.ts';
import type { ScheduleProblem } from '../../../../src/core/solve/schedule/problem.ts';

const problem: ScheduleProblem = {
  durations: [10, 10, 10],
  lags: [
    [0, 1, 0, 'end', 'start'],
    [1, 0, -15, 'start', 'end'],
  ],
  demands: [[1], [0], [1]],
  capacities: [1],
  calendars: [
    {
      open: [
        [0, 40],
        [60, 100],
      ],
      every: 100,
    },
  ],
  calendarOf: [0, 0, 0],
  splits: [false, false, true],
  releases: [0, 0, 5],
  deadlines: [Infinity, Infinity, 95],
  holds: [{ resource: 0, count: 1, from: [[0, 'end']], to: [[1, 'start']] }],
  exclusions: [{ one: [{ job: 1, after: 5 }], other: [{ job: 2, after: 0 }] }],
};
const judge = (starts: readonly number[], ends: readonly number[]) =>
  brokenRules(problem, { starts, ends }).map(({ because }) => because);

it('finds nothing wrong with a schedule that keeps every rule', () => {
  expect(judge([0, 10, 25], [10, 20, 35])).toEqual([]);
});
it.each([
  ['an end that does not belong to the start', [0, 10, 25], [10, 20, 36], ['calendar']],
  ['a job over closing time', [0, 10, 35], [10, 20, 45], ['calendar']],
  ['a split job that ends too early', [0, 10, 35], [10, 20, 64], ['calendar']],
  ['a start at a closed minute', [0, 10, 45], [10, 20, 70], ['calendar']],
  ['half minutes', [0, 10, 25.5], [10, 20, 35.5], ['calendar']],
  ['a job before its forerunner has ended', [0, 8, 25], [10, 18, 35], ['lags']],
  ['a greatest lag', [0, 26, 60], [10, 36, 70], ['lags']],
  ['a start before its release', [60, 70, 4], [70, 80, 14], ['deadline']],
  ['an end after its deadline', [0, 10, 88], [10, 20, 98], ['deadline']],
  ['two jobs in one place', [0, 10, 9], [10, 20, 19], ['capacity', 'exclusion']],
  ['a job in a place that is held', [0, 25, 12], [10, 35, 22], ['capacity']],
  ['a job before the vapour has cleared', [0, 10, 24], [10, 20, 34], ['exclusion']],
] as const)('finds %s', (_, starts, ends, broken) => {
  expect(judge(starts, ends)).toEqual(broken);
});
it('takes a split job over closing time as it is', () => {
  expect(judge([0, 10, 35], [10, 20, 65])).toEqual([]);
});
