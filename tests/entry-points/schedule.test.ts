import { describe, expect, it } from 'vitest';
import { schedule } from '../../src/schedule.ts';

const problem = {
  durations: [30, 30, 45],
  lags: [[0, 2, 30]],
  demands: [[1], [1], [2]],
  capacities: [2],
} as const;

describe('schedules as another program asks for them', () => {
  it('puts jobs in time', () => {
    // Jobs 0 and 1 side by side; job 2 needs both units: not before 30. Ends at 75, which the lag forces.
    expect(schedule(problem)).toMatchObject({
      starts: [0, 0, 30],
      makespan: 75,
      lowerBound: 75,
      optimal: true,
    });
  });

  it.each([
    ['half a minute', { durations: [0.5, 20, 45] }, RangeError, 'durations[0] must be a whole number from 0'],
    ['a lag to no job', { lags: [[0, 3, 30]] }, RangeError, 'lags[0] names job 3, but there are only 3.'],
    [
      'demands of too few jobs',
      { demands: [[1]] },
      RangeError,
      'demands must hold 3, one for each job, not 1.',
    ],
    [
      'demands of no resource',
      { capacities: [] },
      RangeError,
      'demands[0] must hold 0, one for each resource',
    ],
    [
      'releases of too few jobs',
      { releases: [1] },
      RangeError,
      'releases must hold 3, one for each job, not 1.',
    ],
    ['no durations', { durations: undefined }, TypeError, 'durations must be a list, not left out.'],
  ])('refuses %s, and says what is wrong', (_, wrong, kind, message) => {
    const call = (): unknown => schedule({ ...problem, ...wrong } as never);
    expect(call).toThrow(kind);
    expect(call).toThrow(message);
  });
});
