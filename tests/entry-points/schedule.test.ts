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
    [
      'a lag to no job',
      { lags: [[0, 3, 30]] },
      RangeError,
      'lags[0][1] must be a whole number from 0 to 2, not 3.',
    ],
    [
      'an edge of no name',
      { lags: [[0, 1, 1, 'begin', 'end']] },
      TypeError,
      'lags[0][3] must be "start" or "end", not the text "begin".',
    ],
    [
      'a release that is no number',
      { releases: ['a', 0, 0] },
      TypeError,
      'releases[0] must be a whole number, not the text "a".',
    ],
    [
      'a deadline that is none',
      { deadlines: [NaN, 3, 3] },
      RangeError,
      'deadlines[0] must be a whole number',
    ],
    [
      'opening hours out of order',
      { calendars: [{ open: [[10, 14], [0, 4]] }] }, // prettier-ignore
      RangeError,
      'calendars[0].open[1] must begin where calendars[0].open[0] has ended.',
    ],
    [
      'a period shorter than what repeats',
      { calendars: [{ open: [[0, 9]], every: 8 }] },
      RangeError,
      'calendars[0].every must be a whole number from 9',
    ],
    [
      'a calendar that is not there',
      { calendars: [{ open: [[0, 9]] }], calendarOf: [0, 0, 1] },
      RangeError,
      'calendarOf[2] must be a whole number from -1 to 0, not 1.',
    ],
    [
      'a hold of nothing',
      { holds: [{ resource: 4, count: 1, from: [], to: [] }] },
      RangeError,
      'holds[0].resource must be a whole number from 0 to 0, not 4.',
    ],
    [
      'an exclusion of no job',
      { exclusions: [{ one: [{ job: 9, after: 0 }], other: [] }] },
      RangeError,
      'exclusions[0].one[0].job must be a whole number from 0 to 2, not 9.',
    ],
    ['no budget at all', { budget: 0 }, RangeError, 'budget must be a whole number from 1'],
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
