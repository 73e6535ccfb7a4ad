import { describe, expect, it } from 'vitest';
import type { Guide } from '../../../../src/core/model/guide.ts';
import type { PlannedJob } from '../../../../src/core/plan/result.ts';
import { linesReady } from '../../../../src/core/plan/schedule/readiness.ts';
import { aGuide, aStep, inOrder, time } from '../a-workspace.ts';
import { aJob, aWorkload } from './a-workload.ts';

/** On the clock of the reference week, which begins on Monday at 09:00: 540. */
function ready(guide: Partial<Guide>, wanted: number, jobs: readonly PlannedJob[]) {
  const { lines, workspace, clock } = aWorkload([aGuide('x', guide)], [{ guide: 'x', wanted }]);
  return linesReady(lines, jobs, workspace.program, clock)[0]!;
}
const cast = aStep('cast', '5 min', '0 min', { for: { per: 'every', models: 2 } });

describe('a model is ready', () => {
  it('when its last run and the wait after it are over', () => {
    const jobs = [
      aJob('cast', [1, 2], 540, 545, { waitEnd: 900 }),
      aJob('trim', [2], 600, 610, { waitEnd: 640 }),
      aJob('trim', [1], 620, 630),
    ];
    expect(ready({ steps: inOrder(cast, aStep('trim', '10 min')) }, 2, jobs)).toEqual({
      ready: 640,
      models: [{ ready: 630 }, { ready: 640 }],
    });
  });

  it('when each of the steps that end it is over, whichever comes last', () => {
    const steps = [cast, aStep('sew', '5 min')];
    const jobs = [aJob('sew', [1], 540, 545), aJob('cast', [1, 2], 540, 550), aJob('sew', [2], 550, 560)];
    expect(ready({ steps }, 2, jobs).models).toEqual([{ ready: 550 }, { ready: 560 }]);
  });

  it('from the beginning where nothing is left to do for it', () => {
    expect(ready({ steps: [cast] }, 4, [aJob('cast', [3, 4], 700, 705)])).toEqual({
      ready: 705,
      models: [{ ready: 540 }, { ready: 540 }, { ready: 705 }, { ready: 705 }],
    });
    expect(ready({ steps: [cast] }, 2, []).ready).toBe(540);
  });

  it('and good as long as it keeps at its longest; all of them until the first one goes off', () => {
    const keeps = [{ for: time('1 h'), at: 'room' }, { for: time('3 h'), at: 'fridge' }]; // prettier-ignore
    const jobs = [aJob('cast', [3, 4], 540, 545), aJob('cast', [1, 2], 550, 555)];
    expect(ready({ steps: [cast], keeps }, 4, jobs)).toEqual({
      ready: 555,
      useBy: 545 + 180,
      models: [555, 555, 545, 545].map((at) => ({ ready: at, useBy: at + 180 })),
    });
    // none is made where all are finished
    const { lines, workspace, clock } = aWorkload([aGuide('x', { keeps })], [{ guide: 'x', wanted: 1 }], {}, {
      finished: [{ guide: 'x', models: 1, past: [] }],
    }); // prettier-ignore
    expect(linesReady(lines, [], workspace.program, clock)).toEqual([{ ready: 540, models: [] }]);
  });
});
