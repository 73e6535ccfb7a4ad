import { describe, expect, it } from 'vitest';
import type { Plan, PlannedSchedule } from '../../../src/core/plan/result.ts';
import { exactText } from '../../../src/core/quantity/exact.ts';
import { asText, planOf, said } from './a-workspace.ts';
import { gelatinRoom } from './gelatin-block.ts';

/*
 * Twelve blocks, worked by hand.
 *
 * gel      12 x 1.2 L x 1.05 waste = 15.12 L; 5 % stays in the pot: 15.12 / 0.95 = 1512/95 L = 15.9158 L mixed,
 *          which is 15.9158 / 1.2 = 252/19 = 13.263 times the recipe
 * gelatin  252/19 x 120 g = 30240/19 g  = 1591.58 g     4 packs of 500 g at 6.40 = 25.60     used x 0.0128 = 20.3722
 * water    252/19 x 1080 mL             = 14324.2 mL    free
 * psyllium 252/19 x 14 g = 3528/19 g    = 185.68 g      2 packs of 100 g at 2.50 = 5.00
 *          usual 252/19 x 10 g          = 132.63 g                                          used x 0.025  =  3.3158
 * tube     12 x 180 mm                  = 2.16 m        3 rods of 1 m at 1.80    = 5.40     used x 1.80   =  3.8880
 * spray    400 mL does 30: bought whole                 1 can at 4.20            = 4.20     12/30 x 4.20  =  1.6800
 *                                                                        goods    40.20     used           29.2560
 * delivery 25.60 from the craft shop, under its 40.00:                             4.95     each            2.4380
 * outlay   45.15, each 3.7625; tools are all owned, so cash to start is 45.15
 * tools    pot: 3 holds / 500 x 24.00 = 0.144; tins: 12 holds / 300 x 7.50 = 0.30; scale: no life said
 *          0.444 / 12 = 0.037 each: with tools 2.475
 * hands-on weigh 10 + melt 3 x (4 + 4) + pour 3 x 12 + unmould 12 x 5 = 130 min; at 18.00/h = 39.00, each 3.25
 *          with labour 5.725; per use 2.438 / 8 = 0.30475
 * time     a pot of 4 a day, since 4 of 6 tins are full until the morning: days 1, 2 and 3, unmoulded on day 4 by two
 *          builders: 09:00 + 4 x 5 / 2 min = day 4, 09:10 = minute 4870; from Monday 09:00: 4330 min
 * keeps    the first four are ready on day 2; two of them at 09:05 at the earliest; 5 d in the fridge
 */
const plan: Plan = planOf(gelatinRoom, [{ guide: 'needle-block', wanted: 12 }]);
const [line] = plan.lines;
const money = exactText;

describe('twelve needle blocks', () => {
  it('take so much of each material', () => {
    expect(
      plan.requirements.map(({ material, amount, usual }) => [material, said(amount), said(usual)]),
    ).toEqual([
      ['gelatin-powder', '30240/19 g', '30240/19 g'],
      ['water', '272160/19 mL', '272160/19 mL'],
      ['psyllium', '3528/19 g', '2520/19 g'],
      ['tube', '2.16 m', '2.16 m'],
      ['oil-spray', '160 mL', '160 mL'],
    ]);
  });

  it('are bought in whole packs, and brought for 4.95', () => {
    expect(
      plan.purchases.map(({ material, packs, cost }) => [
        material,
        packs.map(({ count }) => count),
        money(cost!),
      ]),
    ).toEqual([
      ['gelatin-powder', [4], '25.6'],
      ['water', [], '0'],
      ['psyllium', [2], '5'],
      ['tube', [3], '5.4'],
      ['oil-spray', [1], '4.2'],
    ]);
    expect(
      plan.deliveries.map(({ supplier, goods, charge }) => [supplier, money(goods), money(charge)]),
    ).toEqual([
      ['craft-shop', '25.6', '4.95'],
      [undefined, '14.6', '0'],
    ]);
  });

  it('cost six different sums', () => {
    const [each] = plan.cost.each;
    expect([plan.cost.outlay, plan.cost.cashToStart].map(money)).toEqual(['45.15', '45.15']);
    expect({
      used: money(each!.used),
      outlay: money(each!.outlay),
      withTools: money(each!.withTools),
      withLabour: money(each!.withLabour),
      perUse: money(each!.perUse!),
      handsOn: each!.handsOn,
    }).toEqual({
      used: '2.438',
      outlay: '3.7625',
      withTools: '2.475',
      withLabour: '5.725',
      perUse: '0.30475',
      handsOn: 130,
    });
    expect(plan.cost).toMatchObject({ complete: true, toolsComplete: true, handsOn: 130 });
  });

  it('are weighed out at once, melted and poured by fours, unmoulded one by one', () => {
    expect(line!.steps.map(({ step, runs, dangerous }) => [step, runs.length, dangerous])).toEqual([
      ['weigh-out', 1, false],
      ['melt', 3, true], // 60 °C
      ['pour', 3, true], // H222, H229
      ['unmould', 12, false],
    ]);
    const takes = line!.steps.flatMap(({ step, takes: all }) =>
      all.map(({ use, total, run }) => [step, use, said(total), said(run)]),
    );
    expect(takes).toEqual([
      ['weigh-out', 'gelatin-powder', '30240/19 g', '30240/19 g'],
      ['weigh-out', 'psyllium', '3528/19 g', '3528/19 g'],
      ['melt', 'water', '272160/19 mL', '90720/19 mL'], // nobody names it: into the pot
      ['pour', 'gel', '15.12 L', '5.04 L'],
      ['pour', 'tube', '2160 mm', '720 mm'],
      ['pour', 'oil-spray', '400 mL', '400 mL'],
    ]);
  });

  it('take four mornings, since four of six tins are full overnight', () => {
    const schedule = plan.schedule as PlannedSchedule;
    expect(schedule).toMatchObject({
      start: 540,
      firstHandsOn: 970, // Monday 16:10: poured by closing time, which is as late as the night lets it be
      ready: 4870,
      makespan: 3900,
      buildTime: 3900,
      handsOn: 130,
    });
    const days = (step: string): number[] => [
      ...new Set(
        schedule.jobs.filter((job) => job.step === step).map(({ start }) => Math.floor(start / 1440) + 1),
      ),
    ];
    expect([days('pour'), days('unmould')]).toEqual([
      [1, 2, 3],
      [2, 3, 4],
    ]);
    expect(schedule.lines).toMatchObject([{ ready: 4870, useBy: 1440 + 1008 + 5 * 1440 }]);
    expect(schedule.lines[0]!.models).toHaveLength(12);
    expect(plan.tools.map(({ tool, peak, toBuy }) => [tool, peak, toBuy])).toEqual([
      ['stockpot', 1, 0],
      ['loaf-tin', 6, 0],
      ['scale', 1, 0],
    ]);
  });

  it('are planned the same to the byte the next time', () => {
    expect(asText(planOf(gelatinRoom, [{ guide: 'needle-block', wanted: 12 }]))).toBe(asText(plan));
  });

  it('call for a warning about the spray from four times the author’s own batch on', () => {
    const codes = (wanted: number) =>
      planOf(gelatinRoom, [{ guide: 'needle-block', wanted }]).warnings.map(({ code }) => code);
    expect([codes(12), codes(16)]).toEqual([[], ['batch-much-larger']]);
  });
});
