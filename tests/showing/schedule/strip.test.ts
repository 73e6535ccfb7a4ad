import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makePlan } from '../../../src/core/plan/plan.ts';
import { showPlan } from '../../../src/showing/plan/show-plan.ts';
import { bench } from '../bench.ts';

function stripOf(wanted: number, settings = {}) {
  const plan = makePlan(bench, [{ guide: 'gel-block', wanted }], {
    today: '2026-11-25',
    effort: '1/20',
    ...settings,
  });
  if ('refused' in plan) throw new Error(JSON.stringify(plan.refused));
  return showPlan(plan, bench).schedule.strip;
}

describe('the picture of the schedule', () => {
  it('lies between 0 and 1000, ends with the last wait, and its ticks are in order', () => {
    const settings = fc.constantFrom({}, { start: '2026-12-04T16:00' });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), settings, (wanted, chosen) => {
        const { rows, closed, ticks } = stripOf(wanted, chosen);
        const bars = [...rows.flatMap((row) => row.bars), ...closed];
        expect(bars.filter(({ from, to }) => from < 0 || to > 1000 || from > to)).toEqual([]);
        expect(Math.min(...rows.flatMap((row) => row.bars.map(({ from }) => from)))).toBe(0);
        expect(Math.max(...rows.flatMap((row) => row.bars.map(({ to }) => to)))).toBe(1000);
        expect(ticks.map(({ at }) => at)).toEqual(ticks.map(({ at }) => at).sort((a, b) => a - b));
        expect(ticks[0]!.day).toBe(true);
      }),
      { numRuns: 5 },
    );
  });

  it('draws closed hours narrow: a night takes less room than the two hours of work before it', () => {
    // 9 blocks go through the pot in three runs and a second day; the night between is 16 hours.
    const { closed, rows } = stripOf(4);
    const night = closed.at(-1)!;
    const work = rows[0]!.bars[0]!;
    expect(night.to - night.from).toBeGreaterThan(0);
    // Cutting takes 8 min of a build that ends at night: its bar is wider than a fifteenth of the closed hours.
    expect((work.to - work.from) * 15).toBeGreaterThan(night.to - night.from);
  });

  it('shows lunch and night as closed', () => {
    // Working hours 09:00–12:30 and 13:00–17:00; the last wait of four blocks ends at 22:16.
    expect(stripOf(4).closed).toHaveLength(2);
  });
});
