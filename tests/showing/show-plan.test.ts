import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DemandLine } from '../../src/core/plan/demand.ts';
import { makePlan } from '../../src/core/plan/plan.ts';
import type { Plan } from '../../src/core/plan/result.ts';
import { zero } from '../../src/core/quantity/exact.ts';
import { convert, ratio } from '../../src/core/quantity/quantity.ts';
import { usualReading } from '../../src/showing/amounts.ts';
import { readingOf } from '../../src/showing/readings.ts';
import { roundedFor, sharesOf } from '../../src/showing/shares.ts';
import { showPlan } from '../../src/showing/show-plan.ts';
import type { ShownPlan } from '../../src/showing/shown.ts';
import { bench } from './bench.ts';
import { leavesOf } from './leaves.ts';

const today = '2026-11-25';

function planOf(demand: readonly DemandLine[], settings = {}, workspace = bench): Plan {
  const plan = makePlan(workspace, demand, { today, ...settings });
  if ('refused' in plan) throw new Error(JSON.stringify(plan.refused));
  return plan;
}
const shownOf = (wanted: number, settings = {}): ShownPlan =>
  showPlan(planOf([{ guide: 'gel-block', wanted }], settings), bench);

const batch = fc.integer({ min: 1, max: 60 });

describe('every text of a plan', () => {
  it('has a key of its own, the same at every batch size where the structure is the same', () => {
    const keysOf = (plan: ShownPlan): readonly string[] => leavesOf(plan.lines).map(({ key }) => key);
    fc.assert(
      fc.property(batch, (wanted) => {
        const shown = shownOf(wanted);
        const keys = leavesOf(shown).map(({ key }) => key);
        expect(new Set(keys).size).toBe(keys.length);
        expect(keysOf(shown)).toEqual(keysOf(shownOf(1)));
      }),
      { numRuns: 20 },
    );
  });

  it('is proper: a zero before the point and none after it, no break before a unit, and no slip of the program', () => {
    const settings = fc.constantFrom({}, { start: '2026-11-30T09:00' }, { builders: 1 }, { spares: '1/10' });
    fc.assert(
      fc.property(batch, settings, (wanted, chosen) => {
        for (const { key, text } of leavesOf(shownOf(wanted, chosen))) {
          expect(text, key).not.toMatch(/\D\.\d|^\.\d/);
          expect(text, key).not.toMatch(/\d\.0\b/);
          expect(text, key).not.toMatch(/\d (?:g|kg|mg|mL|L|mm|cm|m|cm²|m²|°C|%|min|h|d|s)(?![\p{L}\d])/u);
          expect(text, key).not.toMatch(/NaN|undefined|null|Infinity|\[object/);
          expect(text, key).not.toMatch(/[{}]/);
          expect(text, key).toBe(text.trim());
        }
      }),
      { numRuns: 20 },
    );
  });

  it('same plan, same letters', () => {
    expect(JSON.stringify(shownOf(7))).toBe(JSON.stringify(shownOf(7)));
  });
});

describe('amounts of a guide', () => {
  it('are multiples of what the tool reads, never below the exact total, and the steps add up to them', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), (wanted) => {
        const [line] = planOf([{ guide: 'gel-block', wanted }]).lines;
        for (const use of ['gelatin-powder', 'water', 'gel']) {
          const total =
            line!.mixes[0]!.ingredients.find((ingredient) => ingredient.use === use)?.total ?? line!.rows[0]!.total;
          const reading = readingOf(line!, use, total.unit, bench.tools) ?? usualReading(total.unit)!;
          const shownTotal = roundedFor(line!, use, total, bench.tools);
          expect(ratio(shownTotal, reading).d).toBe(1n);
          expect(ratio(shownTotal, total).compare(1)).toBeGreaterThanOrEqual(0);
          const shares = [...sharesOf(line!, use, bench.tools).values()];
          const sum = shares.reduce((all, share) => all.add(convert(share, total.unit).value), zero);
          expect(sum.equals(convert(shownTotal, total.unit).value), use).toBe(true);
        }
      }),
      { numRuns: 40 },
    );
  });
});
