import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DemandLine } from '../../../src/core/plan/demand.ts';
import { makePlan } from '../../../src/core/plan/plan.ts';
import { planText } from '../../../src/showing/terminal/plan-text.ts';
import { showPlan } from '../../../src/showing/plan/show-plan.ts';
import { bench } from '../bench.ts';

function textOf(demand: readonly DemandLine[], settings = {}, width = 80): string {
  const plan = makePlan(bench, demand, { today: '2026-11-25', ...settings });
  if ('refused' in plan) throw new Error(JSON.stringify(plan.refused));
  return planText(showPlan(plan, bench), width);
}
const few = textOf([{ guide: 'gel-block', wanted: 4 }]);
const both = textOf([
  { guide: 'gel-block', level: 'shallow', wanted: 4 },
  { guide: 'gel-block', level: 'deep', wanted: 1 },
]);

describe('the plan in a terminal', () => {
  it('has no line above 80 columns, nor above any other width; no blanks at the end of a line', () => {
    const settings = fc.constantFrom({}, { start: '2026-11-30T09:00' }, { spares: '1/10', builders: 1 });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 64, max: 120 }),
        settings,
        (wanted, width, chosen) => {
          const lines = textOf([{ guide: 'gel-block', wanted }], chosen, width).split('\n');
          expect(lines.filter((line) => line.length > width)).toEqual([]);
          expect(lines.filter((line) => line !== line.trimEnd())).toEqual([]);
        },
      ),
      { numRuns: 12 },
    );
  });

  it('tells the dangers before anything is bought or done', () => {
    const places = [
      'Gel block, Shallow vessel: 4',
      'For training only',
      'Be careful',
      'WARNING',
      'Local policy first',
      'Buy',
      'Costs',
      'Who does what when',
    ];
    const found = places.map((text) => few.replaceAll('\u00a0', ' ').indexOf(text));
    expect(found).toEqual([...found].sort((a, b) => a - b));
    expect(Math.min(...found)).toBe(0);
  });

  it('sets a caution with its steps, its harm, and each way to avoid it on a line of its own', () => {
    expect(few.replaceAll('\u00a0', ' ')).toContain(
      [
        '  WARNING  Steps 2 and 3. Hot gel sticks to skin. Burns.',
        '           -  Heat-proof gloves, long sleeves.',
        '           -  Nobody in reach of the pot handle.',
        '  NOTICE   Blocks look like food.',
        '           -  Label them.',
      ].join('\n'),
    );
  });

  it('sets what to buy in columns under its supplier', () => {
    // 4 blocks: gelatin 530.5… g, 2 x 500 g at £6.40; felt 8 pieces of 150 cm², one of five sheets of 1350 cm² without a price;
    // spray one can at £4.20, of which 4/30 are used, 53.3 mL, measured by a jug of 10 mL; delivery £4.95.
    expect(few.replaceAll('\u00a0', ' ')).toContain(
      [
        '    Material              Needed  Packs                          Cost  Left over',
        '  A craft shop, order 3 working days before you start',
        '    Gelatin powder         531 g  2 × 500 g                    £12.80      469 g',
        '    Felt, 3 mm          1200 cm²  1 × 5 of 450 mm ×          no price   5400 cm²',
        '                                  300 mm',
        '    Oil spray              60 mL  1 × 400 mL                    £4.20     345 mL',
        '    Delivery                                                    £4.95',
        '  Not bought',
        '    Water                 4.78 L  free                              –          –',
        '    Whole packs and                                   at least £21.95',
        '    delivery',
      ].join('\n'),
    );
  });

  it('gives several guides numbers, which stand for them below', () => {
    expect(both.split('\n')[0]).toBe('(1) Gel block, Shallow vessel: 4 to make, no spares');
    expect(both.split('\n')[1]).toBe('(2) Gel block, Deep vessel: 1 to make, no spares');
    expect(both).toMatch(/builder\u00a0?\s?1 {2}\([12]\) {2}/);
    expect(both).toMatch(/\(2\) {2}All are ready day/);
  });

  it('says why where there is no schedule, and still prints the rest', () => {
    const plan = makePlan(bench, [{ guide: 'gel-block', wanted: 4 }], { today: '2026-11-25' });
    if ('refused' in plan) throw new Error('refused');
    const facts = { step: 'Melt the gel', other: 'Pour the gel' };
    const none = { code: 'schedule-impossible', variant: 'lags', helps: [], facts } as const;
    const text = planText(showPlan({ ...plan, schedule: { none } }, bench));
    expect(text.replace(/\s+/g, ' ')).toContain(
      'limit. “Pour the gel” cannot be done in time after “Melt the gel”:',
    );
    expect(text).toContain('Buy\n');
    expect(text).not.toContain('Build time');
  });
});
