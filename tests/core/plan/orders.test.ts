import { describe, expect, it } from 'vitest';
import type { Material } from '../../../src/core/model/material.ts';
import type { PlanSettings } from '../../../src/core/plan/demand.ts';
import type { Plan } from '../../../src/core/plan/result.ts';
import { exactText } from '../../../src/core/quantity/exact.ts';
import { isoTime } from '../../../src/core/time/iso-time.ts';
import { aGuide, aMaterial, aRow, aStep, aWorkspace, pack, planOf, time } from './a-workspace.ts';

const cheap = pack('500 g', '4 GBP', { from: 'far' });
const quick = pack('500 g', '5.50 GBP', { from: 'near' });
const suppliers = {
  far: { name: 'far', arrivesIn: time('5 working days') },
  near: { name: 'near', arrivesIn: time('1 working days') },
};

function plan(packs: Material['packs'], settings: Partial<PlanSettings>): Plan {
  const felt = aMaterial('felt', { packs });
  const guide = aGuide('x', { materials: [aRow('felt', '300 g')] });
  const workspace = aWorkspace({ program: { suppliers }, materials: [felt], guides: [guide] });
  return planOf(workspace, [{ guide: 'x', wanted: 1 }], { effort: '1/10', ...settings });
}
const { zone } = aWorkspace({ guides: [] }).program;
const clock = (minute: number | undefined) =>
  minute === undefined ? undefined : isoTime(zone, minute).slice(0, 16);

describe('planned backwards, today a Wednesday, ready by Monday noon', () => {
  const readyBy = '2026-11-30T12:00';

  it('only packs are bought that are there in time', () => {
    // used on Monday at 11:50; the cheap pack comes on Wednesday
    const { purchases, schedule } = plan([cheap, quick], { readyBy });
    expect(purchases[0]!.packs).toEqual([{ pack: 1, count: 1 }]);
    expect('none' in schedule).toBe(false);
  });

  it('orders go out on the last working day that is early enough', () => {
    // ordered on Friday, there on Monday at opening
    const { deliveries, schedule } = plan([cheap, quick], { readyBy });
    const [{ ordered, arrives }] = deliveries as [Plan['deliveries'][number]];
    expect([clock(ordered), clock(arrives)]).toEqual(['2026-11-27T09:00', '2026-11-30T09:00']);
    expect('none' in schedule ? undefined : clock(schedule.start)).toBe('2026-11-27T09:00');
  });

  it('orders go out at opening too where the clocks go forward in between', () => {
    // clocks go forward on Sunday 28 March 2027 (IANA zone database); used on Wednesday at 16:50 by the new ones
    const { deliveries } = plan([quick], { today: '2027-03-25', readyBy: '2027-03-31T17:00' });
    expect(deliveries.map(({ ordered, arrives }) => [clock(ordered), clock(arrives)])).toEqual([
      ['2027-03-30T09:00', '2027-03-31T09:00'],
    ]);
  });

  it('cannot be done where no pack comes in time, and says how much later it could', () => {
    const { schedule, purchases } = plan([cheap], { readyBy });
    if (!('none' in schedule)) throw new Error('there should be none');
    const { code, variant, facts, helps } = schedule.none;
    const moment = (fact: string | undefined) => clock(Number(fact!.slice(1)));
    expect([code, variant, facts['material']]).toEqual(['schedule-impossible', 'delivery', 'felt']);
    expect([moment(facts['needed']), moment(facts['arrives'])]).toEqual([
      '2026-11-30T11:50',
      '2026-12-02T09:00',
    ]);
    // two days later, Wednesday noon: there at nine
    expect(helps.map(({ change, ready }) => [change, clock(ready)])).toEqual([
      [{ kind: 'later', minutes: 2880 }, '2026-12-02T12:00'],
    ]);
    expect(purchases[0]!.packs).toHaveLength(1);
  });

  it('takes a cheap pack that is late for nothing, since enough is in stock', () => {
    const stock = { felt: { value: '300', unit: 'g' } };
    const { purchases, schedule } = plan([cheap], { readyBy, stock });
    expect([purchases[0]!.packs, 'none' in schedule]).toEqual([[], false]);
  });
});

describe('planned forwards, price alone chooses', () => {
  it('and a pack that would be there sooner is pointed out, with what it gains and costs', () => {
    // cheap: Wednesday 25 to Wednesday 2, 09:10 ready; quick: Thursday 26, 09:10: six days and 1.50 more
    const { purchases, warnings } = plan([cheap, quick], { start: '2026-11-25T09:00' });
    expect(purchases[0]!.packs).toEqual([{ pack: 0, count: 1 }]);
    expect(warnings).toContainEqual({
      code: 'faster-pack',
      severity: 'warning',
      places: [],
      facts: { material: 'felt', earlier: '8640 min', cost: '1.50 GBP' },
    });
  });

  it.each([
    ['it is the quickest already', [quick]],
    ['both take as long', [cheap, pack('500 g', '9 GBP', { from: 'far' })]],
  ])('and nothing is said where %s', (_, packs) => {
    const { warnings } = plan(packs, { start: '2026-11-25T09:00' });
    expect(warnings.map(({ code }) => code)).not.toContain('faster-pack');
  });
});

describe('what goes off', () => {
  // three models of 200 minutes each, one builder: Monday morning, Monday afternoon, Tuesday morning until 12:20
  const made = (keeps: Material['keeps'], ...packs: Material['packs']) => {
    const milk = aMaterial('milk', { packs, keeps });
    const guide = aGuide('x', { materials: [aRow('milk', '100 mL')], steps: [aStep('make', '200 min')] });
    const workspace = aWorkspace({ program: { builders: 1 }, materials: [milk], guides: [guide] });
    return planOf(workspace, [{ guide: 'x', wanted: 3 }], { effort: '1/10' }).warnings.filter(({ code }) =>
      code.includes('goes-off'),
    );
  };

  it('is a pack that was opened too long before its last use', () => {
    // opened on Monday at 9:10 (minute 550), as late as the work allows; good for a day, in use until Tuesday 12:20
    // (minute 2180)
    expect(made({ opened: time('1 d') }, pack('300 mL', '2 GBP'))).toEqual([
      {
        code: 'opened-goes-off',
        severity: 'warning',
        places: [],
        facts: { material: 'milk', from: '@550', until: '@1990', last: '@2180' },
      },
    ]);
    expect(made({ opened: time('2 d') }, pack('300 mL', '2 GBP'))).toEqual([]);
  });

  it('is not one of several small packs, each used up in time', () => {
    expect(made({ opened: time('1 d') }, pack('100 mL', '1 GBP'))).toEqual([]);
  });

  it('is a closed pack that stands too long', () => {
    // good until Tuesday 8:00; the third pack is opened on Tuesday at 9:00
    expect(
      made({ closed: time('23 h') }, pack('100 mL', '1 GBP')).map(({ variant, facts }) => [
        variant,
        facts['from'],
        facts['last'],
      ]),
    ).toEqual([['closed', '@540', '@1980']]);
  });

  it('is, later, what is left of an opened pack', () => {
    expect(made({ opened: { months: '6' } }, pack('1 L', '4 GBP'))).toEqual([
      {
        code: 'rest-goes-off',
        severity: 'note',
        places: [],
        facts: { material: 'milk', within: '6 mo' },
      },
    ]);
  });
});

it('in the reference week nothing is late, and the cheap pack is bought', () => {
  expect(exactText(plan([cheap, quick], {}).cost.outlay)).toBe('4');
});
