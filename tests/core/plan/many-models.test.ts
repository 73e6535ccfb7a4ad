import { describe, expect, it } from 'vitest';
import type { PlannedSchedule } from '../../../src/core/plan/result.ts';
import { planOf } from './a-workspace.ts';
import { gelatinRoom } from './gelatin-block.ts';

describe('six hundred needle blocks', () => {
  const plan = planOf(gelatinRoom, [{ guide: 'needle-block', wanted: 600 }]);
  const schedule = plan.schedule as PlannedSchedule;

  it('have a schedule, by fours from one pot with six tins', () => {
    // 150 pots, one each working day, since four of six tins are full until the next morning: 30 weeks, the last
    // four unmoulded by two builders on the Monday after: 30 x 10080 + 9 x 60 + 10 min
    expect(schedule.jobs).toHaveLength(1 + 150 + 150 + 600);
    expect(schedule.ready).toBe(30 * 10_080 + 540 + 10);
  });

  it('are proven to take so long, but for the last minutes', () => {
    expect(schedule.makespan - schedule.lowerBound).toBeLessThanOrEqual(5);
  });

  it('are worked on by number, from the first to the last', () => {
    const models = schedule.jobs.filter(({ step }) => step === 'pour').map((job) => job.models[0]!);
    expect(models).toEqual(models.toSorted((a, b) => a - b));
  });
});
