import { describe, expect, it } from 'vitest';
import { atOnce } from '../../../../src/core/in-pieces.ts';
import { plannedJobs } from '../../../../src/core/plan/schedule/back.ts';
import { chainOf } from '../../../../src/core/plan/schedule/chain.ts';
import { schedulingRuns } from '../../../../src/core/plan/schedule/schedule-runs.ts';
import { aGuide, aStep, inOrder } from '../a-workspace.ts';
import { aWorkload } from './a-workload.ts';

describe('what decides the end of a schedule with room in it', () => {
  const saw = aStep('saw', '60 min');
  const paint = aStep('paint', '10 min');

  /** The chain when the jobs begin at these minutes. */
  function told(steps: readonly (typeof saw)[], ...starts: number[]): string[] {
    const work = aWorkload([aGuide('x', { steps })], [{ guide: 'x', wanted: 1 }]);
    const found = atOnce(schedulingRuns({ ...work, arrivals: new Map() }));
    if ('none' in found) throw new Error(JSON.stringify(found));
    const ends = starts.map((start, job) => start + found.problem.durations[job]!);
    const jobs = plannedJobs(work, { ...found, starts, ends });
    return atOnce(chainOf({ ...found, starts, ends }, jobs, false)).map(
      ({ job, because }) => `${jobs[job]!.step} ${because}`,
    );
  }

  it('is what lies between its beginning and its end when nothing else is moved', () => {
    // open from 540 on; painted while there is sawing, whenever that is
    for (const start of [540, 560, 590]) expect(told([saw, paint], 540, start)).toEqual(['saw start']);
    // painted ten minutes after sawing, for no reason
    expect(told(inOrder(saw, paint), 540, 610)).toEqual(['saw start', 'paint step']);
  });

  it('is what comes last in it, though that could be done earlier', () => {
    expect(told([saw, paint], 540, 595)).toEqual(['paint start']);
  });
});
