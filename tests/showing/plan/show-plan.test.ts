import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planAt } from '../../../src/core/model/plan-at.ts';
import type { DemandLine } from '../../../src/core/plan/demand.ts';
import { lineOf } from '../../../src/core/plan/demand/line.ts';
import { makePlan } from '../../../src/core/plan/plan.ts';
import type { Plan, PlannedLine } from '../../../src/core/plan/result.ts';
import { plannedLine } from '../../../src/core/plan/demand/planned-line.ts';
import { zero } from '../../../src/core/quantity/exact.ts';
import { compare, convert, ratio } from '../../../src/core/quantity/quantity.ts';
import { usualReading } from '../../../src/showing/text/amounts.ts';
import { readingOf } from '../../../src/showing/text/readings.ts';
import { needOf, roundedFor, sharesOf } from '../../../src/showing/plan/shares.ts';
import { showPlan } from '../../../src/showing/plan/show-plan.ts';
import type { ShownPlan } from '../../../src/showing/shown/shown-plan.ts';
import { bench, gelBlock } from '../bench.ts';
import { leavesOf } from '../leaves.ts';

const today = '2026-11-25';

function planOf(demand: readonly DemandLine[], settings = {}, workspace = bench): Plan {
  const plan = makePlan(workspace, demand, { today, ...settings });
  if ('refused' in plan) throw new Error(JSON.stringify(plan.refused));
  return plan;
}
const shownOf = (wanted: number, settings = {}): ShownPlan =>
  showPlan(planOf([{ guide: 'gel-block', wanted }], settings), bench);

const batch = fc.integer({ min: 1, max: 24 });

describe('every text of a plan', () => {
  it('has a key of its own, the same at every batch size where the structure is the same', () => {
    const keysOf = (plan: ShownPlan): readonly string[] => leavesOf(plan.lines).map(({ key }) => key);
    const ofOne = keysOf(shownOf(1, { effort: '1/20' }));
    fc.assert(
      fc.property(batch, (wanted) => {
        const shown = shownOf(wanted, { effort: '1/20' });
        const keys = leavesOf(shown).map(({ key }) => key);
        expect(new Set(keys).size).toBe(keys.length);
        expect(keysOf(shown)).toEqual(ofOne);
      }),
      { numRuns: 5 },
    );
  });

  it('is proper: a zero before the point and none after it, no break before a unit, and no slip of the program', () => {
    const settings = fc.constantFrom({}, { start: '2026-11-30T09:00' }, { builders: 1 }, { spares: '1/10' });
    fc.assert(
      fc.property(batch, settings, (wanted, chosen) => {
        for (const { key, text } of leavesOf(shownOf(wanted, { ...chosen, effort: '1/20' }))) {
          expect(text, key).not.toMatch(/\D\.\d|^\.\d/);
          expect(text, key).not.toMatch(/\d\.0\b/);
          expect(text, key).not.toMatch(/\d (?:g|kg|mg|mL|L|mm|cm|m|cm²|m²|°C|%|min|h|d|s)(?![\p{L}\d])/u);
          expect(text, key).not.toMatch(/NaN|undefined|null|Infinity|\[object/);
          expect(text, key).not.toMatch(/[{}]/);
          expect(text, key).toBe(text.trim());
        }
      }),
      { numRuns: 8 },
    );
  });

  it('same plan, same letters', () => {
    expect(JSON.stringify(shownOf(7))).toBe(JSON.stringify(shownOf(7)));
  });
});

/** A line as the plan has it, without the schedule, which takes its time. */
function lineOfMany(wanted: number): PlannedLine {
  return plannedLine(lineOf({ at: planAt(gelBlock), wanted, forOthers: 0 }, bench, zero, []));
}

describe('amounts of a guide', () => {
  it('are multiples of what the tool reads, never below the exact total, and the steps add up to them', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), (wanted) => {
        const line = lineOfMany(wanted);
        for (const use of ['gelatin-powder', 'water', 'gel']) {
          const { total } = needOf(line, use)!;
          const reading = readingOf(line, use, total.unit, bench.tools) ?? usualReading(total.unit)!;
          const of = { line, use, tools: bench.tools, system: 'metric' } as const;
          const shownTotal = roundedFor(of, total);
          expect(ratio(shownTotal, reading).d).toBe(1n);
          expect(compare(shownTotal, total)).toBeGreaterThanOrEqual(0);
          const shares = [...sharesOf(of).values()];
          const sum = shares.reduce((all, share) => all.add(convert(share, total.unit).value), zero);
          expect(sum.equals(convert(shownTotal, total.unit).value), use).toBe(true);
        }
      }),
      { numRuns: 100 },
    );
  });
});

describe('the gel block, 10 of them', () => {
  const shown = showPlan(planOf([{ guide: 'gel-block', wanted: 10 }]), bench);
  const [line] = shown.lines;
  const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

  // gel 10 x 1.2 L x 1.05 = 12.6 L; in the pot 12.6 / 0.95 = 13.263… L, 11.0526… times 1.2 L
  // gelatin 120 g x 11.0526… = 1326.3… g by a scale of 1 g; water 1080 mL x 11.0526… = 11 936.8… mL by a jug of 10 mL
  // spray: 10 of 30 models, 133.3… mL of the can, by the jug
  it.each([
    ['gel', '1.2 L', '12.6 L', '5 % waste counted in; 5 % stays in the pot, counted in'],
    ['gelatin-powder', '120 g', '1.327 kg', 'until clear'],
    ['water', '1.08 L', '11.94 L', ''],
    ['felt-3mm', '2 of 150 mm × 100 mm', '20 of 150 mm × 100 mm', ''],
    ['oil-spray', '1/30 of 400 mL', '140 mL', '400 mL does 30 models'],
  ])('%s: %s for one, %s for all', (id, one, total, note) => {
    const row = line!.materials.find((material) => material.id === id)!;
    expect([row.one, row.total, row.note].map(({ text }) => plain(text))).toEqual([one, total, note]);
  });

  it('a step shows one full run, and what all runs take together', () => {
    // a pot of four: 4 x 1.2 L x 1.05 / 0.95 = 5.305… L, 4.4210… times 1.2 L; gelatin 530.5… g
    const melt = line!.steps.find(({ id }) => id === 'melt-the-gel')!;
    expect(plain(melt.runs.text)).toBe('in 3 runs of up to 4 models');
    expect(
      melt.takes.map(({ amount, unit, total }) => [amount, unit, total].map(({ text }) => plain(text))),
    ).toEqual([
      ['531', 'g', '1.327 kg'],
      ['4.78', 'L', '11.94 L'],
    ]);
    expect(melt.times.map(({ time }) => plain(time.text))).toEqual(['8 min', '20 min']);
    expect(melt.limit.text).toBe('Hands off the next step within 45\u00a0min.');
  });

  it('links of the prose scale with a run inside a step, with one model elsewhere; sizes and settings do not', () => {
    const texts = Object.entries(line!.links).map(([i, { text }]) => [Number(i), plain(text)]);
    expect(texts).toEqual([
      [0, '120 g of gelatin'],
      [1, '531 g of gelatin'],
      [2, '150 mm × 100 mm of felt'],
      [3, '2 skins'],
      [4, '60 °C'],
    ]);
  });

  it('names the dangers of a step by product, and an unknown code by the code alone', () => {
    const cut = line!.steps.find(({ id }) => id === 'cut-the-skins')!;
    expect(cut.hazards.map(({ text }) => text)).toEqual([
      'Oil spray: Extremely flammable aerosol (H222)',
      'Oil spray: Pressurized container: May burst if heated (H229)',
      'Oil spray: H999, see the supplier’s data sheet',
    ]);
    expect(cut.controls.map(({ text }) => text)).toEqual([
      'Cut on a cutting mat, away from your hand',
      'Keep the blade short',
    ]);
  });

  it('cautions stand by severity, as sentences, with their steps by number', () => {
    expect(
      line!.cautions.map(({ word, hazard, steps }) => [word, hazard, steps].map(({ text }) => text)),
    ).toEqual([
      ['WARNING', 'Hot gel sticks to skin.', 'Steps 2 and 3'],
      ['NOTICE', 'Blocks look like food.', ''],
    ]);
  });

  it('a missing price makes every sum that it enters "at least", and is named with the shopping list', () => {
    expect(shown.shopping.total.text).toMatch(/^at least £/);
    expect(shown.shopping.notes.map(({ text }) => text)).toContain(
      'No price known: Felt, 3\u00a0mm. Every sum that it enters is “at least”.',
    );
    // 1326.3… g are 3 packs of 500 g at £6.40; 173.6… g are left over, rounded down.
    const gelatin = shown.shopping.rows.find(({ material }) => material === 'gelatin-powder')!;
    expect([gelatin.packs, gelatin.cost, gelatin.left].map(({ text }) => plain(text))).toEqual([
      '3 × 500 g',
      '£19.20',
      '173 g',
    ]);
  });

  it('says who has the last word, whom to ask, and what the models are for', () => {
    expect(shown.defers.text).toMatch(
      /^Local policy first \(ask .+\), then the supplier’s data sheet, then this guide/,
    );
    expect(shown.trainingOnly.text).toBe('For training only, never for patient care.');
  });
});

describe('where a reading is coarser than 2 % of an amount, the plan says that a finer one is needed', () => {
  const warningsFor = (least: string) => {
    const amount = { least, usual: least, most: least, unit: 'g' };
    const guide = {
      ...gelBlock,
      mixes: [{ ...gelBlock.mixes[0]!, of: [{ use: 'gelatin-powder', amount }] }],
    };
    const steps = guide.steps.map((step) =>
      step.id === 'melt-the-gel' ? { ...step, uses: [{ material: 'gelatin-powder' }] } : step,
    );
    const workspace = { ...bench, guides: { 'gel-block': { ...guide, steps } } };
    const demand = [{ guide: 'gel-block', wanted: 1 }];
    return showPlan(planOf(demand, {}, workspace), workspace).warnings.map(({ text }) =>
      text.replaceAll('\u00a0', ' '),
    );
  };

  // One block takes the amount x 1.05 / 0.95. Of 49.96 g, 1 g is 2.001 %; of 50.84 g, 1.97 %.
  it('45.2 g makes 49.96 g, and 1 g is too coarse for it', () => {
    expect(warningsFor('226/5')).toContain(
      'Gelatin powder: weigh 50 g on a finer scale, one that reads 0.5 g; the plan reckons with 1 g.',
    );
  });
  it('46 g makes 50.8 g, and 1 g is fine enough', () => {
    expect(warningsFor('46').filter((text) => text.includes('finer scale'))).toEqual([]);
  });
});
