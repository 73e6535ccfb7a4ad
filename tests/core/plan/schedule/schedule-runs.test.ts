import { describe, expect, it } from 'vitest';
import { atOnce } from '../../../../src/core/in-pieces.ts';
import type { PlanSettings } from '../../../../src/core/plan/demand.ts';
import { programWith } from '../../../../src/core/plan/schedule/program-with.ts';
import { schedulingRuns } from '../../../../src/core/plan/schedule/schedule-runs.ts';
import { exact } from '../../../../src/core/quantity/exact.ts';
import { aGuide, aProgram, aStep, aToolRow, inOrder, time } from '../a-workspace.ts';
import { aWorkload } from './a-workload.ts';

const steps = inOrder(
  aStep('pour', '10 min', '0 min', { wait: { usual: time('1 h'), ifRoom: {} } }),
  aStep('unmould', '5 min'),
);
const guide = aGuide('x', { steps, tools: [aToolRow('tin', { held: { from: 'pour', to: 'unmould' } })] });
const readyBy = '2026-12-11T16:00';

function scheduled(settings: Partial<PlanSettings>, more: object = {}, tins = 2) {
  const { owned } = programWith(aProgram(), { kind: 'tool', id: 'tin', count: tins });
  const work = aWorkload([guide], [{ guide: 'x', wanted: 3 }], { owned }, settings);
  return atOnce(schedulingRuns({ ...work, arrivals: new Map(), ...more }));
}

describe('the runs of a plan', () => {
  it('are searched for as long as they are asked to be, and as late as can be only forwards', () => {
    // the usual search places 20,000 jobs; 1/30,000 of it is not even one
    expect(scheduled({}, { effort: exact('1/10') })).toMatchObject({
      problem: { placements: 2000, latest: true },
    });
    expect(scheduled({}, { effort: exact('1/30000'), schedules: 7 })).toMatchObject({
      problem: { placements: 1, budget: 7 },
    });
    const backwards = scheduled({ readyBy });
    expect(backwards).toMatchObject({ problem: { placements: 20_000, latest: false } });
    expect(backwards).not.toHaveProperty('problem.budget');
  });

  it.each([{}, { readyBy }])('have none where more tins are full than there are: %o', (settings) => {
    const finished = [{ guide: 'x', models: 0, past: [{ step: 'pour', models: 3 }] }];
    expect(scheduled({ ...settings, finished })).toMatchObject({
      none: { code: 'schedule-not-found', variant: 'tool', facts: { tool: 'tin', has: '2' }, helps: [] },
    });
    expect(scheduled({ ...settings, finished }, {}, 3)).not.toHaveProperty('none');
  });
});
