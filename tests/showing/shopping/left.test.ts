import { describe, expect, it } from 'vitest';
import type { Purchase, RowNeed } from '../../../src/core/plan/result.ts';
import { exact, zero } from '../../../src/core/quantity/exact.ts';
import { showDeliveries } from '../../../src/showing/shopping/show-deliveries.ts';
import { leftText } from '../../../src/showing/shopping/show-left.ts';
import { showShopping } from '../../../src/showing/shopping/show-shopping.ts';
import { showWork } from '../../../src/showing/text/times.ts';
import { showWarnings } from '../../../src/showing/plan/show-warnings.ts';
import { bench } from '../bench.ts';
import { at, job, plain, planOf, scheduleOf } from '../by-hand.ts';

const spray = (rest: Partial<Purchase> = {}): Purchase => ({
  material: 'oil-spray',
  needed: { value: exact(160), unit: 'mL' },
  fromStock: { value: zero, unit: 'mL' },
  packs: [{ pack: 0, count: 1 }],
  cost: exact('21/5'),
  left: { value: exact(240), unit: 'mL' },
  ...rest,
});

describe('what is left of a can that does 30 models', () => {
  it('is told as it is measured', () => {
    expect(plain(leftText(spray(), planOf(12), bench))).toBe('240 mL');
  });

  it('is a dash where nothing is', () => {
    expect(leftText(spray({ left: { value: zero, unit: 'mL' } }), planOf(30), bench)).toBe('–');
  });

  it('of something counted is said in models', () => {
    const plan = planOf(12);
    const [line] = plan.lines;
    const blade = (need: RowNeed): RowNeed => ({
      ...need,
      total: { value: exact(1), unit: '' },
      usual: { value: exact('2/5'), unit: '' },
      one: { value: exact(1), unit: '' },
      unused: { value: exact('3/5'), unit: '' },
    });
    const rows = line!.rows.map((need) => (need.row === 2 ? blade(need) : need));
    const counted = spray({
      needed: { value: exact('2/5'), unit: '' },
      left: { value: exact('3/5'), unit: '' },
    });
    const withBlade = { ...plan, lines: [{ ...line!, rows }] };
    expect(plain(leftText(counted, withBlade, bench))).toBe('enough for 18 models');
    // the rest of an opened blade with nine whole ones
    expect(leftText({ ...counted, left: { value: exact('48/5'), unit: '' } }, withBlade, bench)).toBe('9');
  });
});

describe('a pack of which nobody says where it is from', () => {
  const { holds, price } = bench.materials['oil-spray']!.packs[0]!;
  const pack = { holds, price: price! };
  const workspace = {
    ...bench,
    materials: { ...bench.materials, 'oil-spray': { ...bench.materials['oil-spray']!, packs: [pack] } },
  };
  const plan = planOf(12, { purchases: [spray()], deliveries: [{ goods: exact('21/5'), charge: zero }] });

  it('is bought all the same: it stands under the same name as its delivery, which is not said to be free', () => {
    const [row] = showShopping('shopping', plan, workspace).rows;
    const [delivery] = showDeliveries('deliveries', plan, workspace);
    expect(row!.supplier.text).toBe('No supplier named');
    expect(delivery!.name.text).toBe('No supplier named');
    expect(delivery!.charge.text).toBe('–');
  });
});

it('people’s time is said in hours, however many', () => {
  // 12 d 9 h 20 min of the clock would be 297 h 20 min of work.
  expect(plain(showWork(297 * 60 + 20))).toBe('297 h 20 min');
  expect(plain(showWork(0))).toBe('0 min');
});

describe('warnings with times', () => {
  const schedule = scheduleOf([job('melt-the-gel', 1, at(1, '09:00'))], []);
  const warning = (code: string, facts: Record<string, string>) =>
    ({ code, severity: 'warning', places: [], facts }) as const;
  const notesOf = (...warnings: readonly ReturnType<typeof warning>[]): readonly string[] =>
    showShopping('shopping', planOf(4, { schedule, warnings }), bench).notes.map(({ text }) => plain(text));

  it('print moments as days, lengths of time in hours, and money with its sign', () => {
    expect(
      notesOf(
        warning('opened-goes-off', {
          material: 'Oil spray',
          from: `@${at(1, '09:00')}`,
          until: `@${at(2, '09:00')}`,
          last: `@${at(3, '12:00')}`,
        }),
        warning('faster-pack', { material: 'Oil spray', earlier: '1500 min', cost: '2.50 GBP' }),
      ),
    ).toEqual([
      'Oil spray: a pack that is opened day 1, 09:00 is good until day 2, 09:00, and still in use day 3, 12:00. Order smaller packs, or make the models nearer together.',
      'Oil spray: another pack would be there sooner. All would be ready 25 h earlier, for £2.50 more.',
    ]);
  });

  it('say the same of several materials in one sentence, and of those with another time in another', () => {
    const rest = (material: string, within: string) => warning('rest-goes-off', { material, within });
    expect(notesOf(rest('Oil spray', '6 mo'), rest('Glue', '6 mo'), rest('Gelatin', '3 mo'))).toEqual([
      'Once opened, use the rest within 6 months: Oil spray and Glue.',
      'Once opened, use the rest within 3 months: Gelatin.',
    ]);
    expect(
      showWarnings('warnings', planOf(4, { schedule, warnings: [rest('Glue', '6 mo')] }), bench),
    ).toEqual([]);
  });
});
