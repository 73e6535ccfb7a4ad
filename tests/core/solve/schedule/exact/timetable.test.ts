import { describe, expect, it } from 'vitest';
import { earliest, latest, networkOf } from '../../../../../src/core/solve/schedule/exact/network.ts';
import { timetable } from '../../../../../src/core/solve/schedule/exact/timetable.ts';
import { prepare } from '../../../../../src/core/solve/schedule/ground/prepared.ts';

/** Others have both places from one minute to another; the later stretch comes first, by the numbers of the jobs. */
type Taken = readonly [from: number, until: number];
const taken: readonly Taken[] = [[12, 14], [6, 8]]; // prettier-ignore

/**
 * The window of a job that needs one of the two places, after what others certainly take up, or what stands against it.
 * The others are two jobs for each stretch, from job 1 on.
 */
function windowOf(minutes: number, [from, until]: Taken, others = taken): unknown {
  const both = others.flatMap((stretch) => [stretch, stretch]);
  const durations = [minutes, ...both.map(([from, until]) => until - from)];
  const problem = {
    durations,
    lags: [],
    demands: durations.map(() => [1]),
    capacities: [2],
    releases: [from, ...both.map(([from]) => from)],
    deadlines: [until, ...both.map(([, until]) => until)],
  };
  const network = networkOf(problem, prepare(problem));
  const obstacle = timetable(network, network.uses[0]!);
  return obstacle ?? [earliest(network, 0), latest(network, 0) + minutes];
}

describe('a job, where others have all places from 6 to 8 and from 12 to 14,', () => {
  it.each<[what: string, minutes: number, window: Taken, left: Taken]>([
    ['stays in the gap that it just fills', 4, [8, 12], [8, 12]],
    ['comes into it from either side', 4, [7, 13], [8, 12]],
    ['begins before both where it just fits there', 6, [0, 11], [0, 6]],
    ['begins after both where it cannot come before', 4, [9, 20], [14, 20]],
    ['ends before both where it cannot come after', 4, [0, 11], [0, 6]],
    ['begins after both where the gap is too short for it', 5, [5, 20], [14, 20]],
    ['ends before both where the gap is too short for it', 5, [0, 13], [0, 6]],
    ['goes anywhere where it fits before and after', 4, [0, 20], [0, 20]],
    [
      'need not heed what is over when it can begin, nor what begins when it must have ended',
      3,
      [8, 12],
      [8, 12],
    ],
  ])('%s', (_, minutes, window, left) => {
    expect(windowOf(minutes, window)).toEqual(left);
  });

  it('has no time at all, and is told with those that are there when it would have to run', () => {
    // 5 min from 5 to 13: the first stretch and the gap are no use, and from 12 on jobs 1 and 2 have both places
    expect(windowOf(5, [5, 13])).toEqual({ because: 'capacity', jobs: [0, 1, 2], resource: 0 });
  });
  it('does not stand in its own way, but ends before others that come when it is certainly there', () => {
    // 6 min from 0 to 8: certainly there from 2 to 6
    expect(windowOf(6, [0, 8], [])).toEqual([0, 8]);
    expect(windowOf(6, [0, 8], [[6, 9]])).toEqual([0, 6]);
    expect(windowOf(6, [0, 8], [[7, 9]])).toEqual([0, 7]);
    expect(windowOf(6, [0, 8], [[0, 2]])).toEqual([2, 8]);
  });
});

describe('more jobs than there are places', () => {
  it('are told by those that are certainly there at the same minute', () => {
    expect(windowOf(4, [0, 4], [[3, 5], [20, 22]])).toEqual({ because: 'capacity', jobs: [0, 1, 2], resource: 0 }); // prettier-ignore
    expect(windowOf(4, [0, 4], [[20, 22], [3, 5]])).toEqual({ because: 'capacity', jobs: [0, 3, 4], resource: 0 }); // prettier-ignore
  });
});
