import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Change, CurvePoint, WhatIf } from '../../../src/core/plan/result.ts';
import { exact } from '../../../src/core/quantity/exact.ts';
import { curveLines, whatIfLines } from '../../../src/showing/terminal/plan-text-what-if.ts';
import { showCurve } from '../../../src/showing/compare/show-curve.ts';
import { showWhatIf } from '../../../src/showing/compare/show-what-if.ts';
import type { ShownCurve } from '../../../src/showing/shown/shown-what-if.ts';
import { bench } from '../bench.ts';
import { at, job, plain, planOf, scheduleOf } from '../by-hand.ts';
import { leavesOf } from '../leaves.ts';

// Ready day 3, 09:18 with 2 builders; 50.00 to start.
const last = job('pour-the-gel', 1, at(3, '09:08'));
const first = job('melt-the-gel', 1, at(1, '09:00'));
const loads = [{ kind: 'builders', id: '', has: 2, peak: 2, minutes: 1, available: 2 }] as const;
const forwards = planOf(12, { schedule: scheduleOf([first, last], [], { loads }) });
const backwards = planOf(12, {
  schedule: scheduleOf([first, last], [], { loads, readyBy: at(3, '10:00') }),
});

const row = (change: Change, rest: Partial<WhatIf> = {}): WhatIf => ({
  change,
  ready: at(2, '11:00'),
  firstHandsOn: at(1, '09:00'),
  outlay: exact(40),
  cashToStart: exact(50),
  ...rest,
});
const textsOf = (plan: typeof forwards, ...rows: readonly WhatIf[]): readonly string[] =>
  showWhatIf(rows, plan, bench).rows.map(({ change, brings, costs }) =>
    plain([change.text, brings.text, costs.text].join(' | ')),
  );

describe('what if', () => {
  it('says what one more builder brings, beside the plan as it is', () => {
    expect(textsOf(forwards, row({ kind: 'builders', count: 3 }))).toEqual([
      'One more builder | ready day 2, 11:00 instead of day 3, 09:18 | nothing more to buy',
    ]);
  });

  it('of a plan made backwards says when to begin', () => {
    const later = { firstHandsOn: at(1, '13:00') };
    expect(textsOf(backwards, row({ kind: 'builders', count: 3 }, later))).toEqual([
      'One more builder | begin day 1, 13:00 instead of 09:00 | nothing more to buy',
    ]);
  });

  it('says what it takes: a tool to buy, or less of the material', () => {
    const rows = [
      row({ kind: 'tool', id: 'stockpot', count: 2 }, { cashToStart: exact('249/4') }),
      row({ kind: 'fewer', line: 0, wanted: 8 }, { outlay: exact(33), cashToStart: exact(43) }),
    ];
    // 62.25 − 50; 50 − 43. The program owns one stockpot.
    expect(textsOf(forwards, ...rows).map((text) => text.split(' | ').filter((_, i) => i !== 1))).toEqual([
      ['One more of “Stockpot”', '£12.25 more to buy'],
      ['4 models fewer', '£7.00 less to buy'],
    ]);
  });

  it('says where nothing is gained, and where there is no schedule', () => {
    const none: WhatIf = {
      change: { kind: 'builders', count: 1 },
      outlay: exact(40),
      cashToStart: exact(50),
    };
    const texts = textsOf(forwards, row({ kind: 'builders', count: 4 }, { ready: at(3, '09:18') }), none);
    expect(texts[0]).toBe('2 more builders | ready no earlier | nothing more to buy');
    expect(texts[1]).toBe('One builder fewer | no schedule | nothing more to buy');
  });

  it('says the day once where it is the same', () => {
    expect(textsOf(forwards, row({ kind: 'builders', count: 3 }, { ready: at(3, '09:10') }))[0]).toContain(
      '| ready day 3, 09:10 instead of 09:18 |',
    );
  });

  const inTerminal = (width: number, ...rows: readonly WhatIf[]): readonly string[] =>
    whatIfLines(showWhatIf(rows, forwards, bench), width).map(plain);

  it('stands in a terminal as a sentence for each change, no line too long', () => {
    const lines = inTerminal(60, row({ kind: 'notice', minutes: 7 * 1440 }));
    expect(lines).toEqual([
      '-  Begun and ordered 7 d earlier: ready day 2, 11:00 instead',
      '   of day 3, 09:18; nothing more to buy.',
    ]);
  });

  it('names in one sentence all that brings nothing', () => {
    const asNow = { ready: at(3, '09:18') };
    const idle = [
      row({ kind: 'builders', count: 3 }, asNow),
      row({ kind: 'tool', id: 'stockpot', count: 2 }, asNow),
    ];
    expect(inTerminal(100, idle[0]!)).toEqual(['-  One more builder: ready no earlier.']);
    expect(inTerminal(100, ...idle)).toEqual([
      '-  Ready no earlier with any of these: one more builder and one more of “Stockpot”.',
    ]);
  });
});

/** 250 g each, packs of 1 kg at 18.00: full at 4, 8 and 12. */
const points: readonly CurvePoint[] = Array.from({ length: 12 }, (_, i) => {
  const models = i + 1;
  return { models, outlay: exact(18 * Math.ceil(models / 4)).div(models), full: models % 4 === 0 };
});
const curveOf = (of: readonly CurvePoint[], wanted = 6): ShownCurve => showCurve(of, planOf(wanted), bench);

describe('the curve of outlay', () => {
  it('lists the sizes that fill their packs', () => {
    expect(curveOf(points).full.text).toBe('Packs are full at 4, 8 and 12 models.');
    expect(curveOf(points.slice(0, 3)).full.text).toBe('No size up to 3 fills its packs.');
  });

  it('of very many lists the first, and says which is the cheapest', () => {
    const many = Array.from({ length: 30 }, (_, i) => ({
      models: i + 1,
      outlay: exact(i === 20 ? 1 : 2),
      full: true,
    }));
    expect(curveOf(many).full.text).toBe(
      'Packs are full at 1, 2, 3, 4, 5, 6, 7, 8 and 22 more sizes; cheapest for each at 21.',
    );
  });

  it('says outlay each of every size, and notes the full ones and this batch', () => {
    const { rows } = curveOf(points);
    expect(rows.map(({ models, each, note }) => `${models.text} ${each.text} ${note.text}`.trim())).toEqual([
      '1 £18.00',
      '2 £9.00',
      '3 £6.00',
      '4 £4.50 full',
      '5 £7.20',
      '6 £6.00 this batch',
      '7 £5.14',
      '8 £4.50 full',
      '9 £6.00',
      '10 £5.40',
      '11 £4.91',
      '12 £4.50 full',
    ]);
  });

  it('is drawn so that the teeth are seen: what costs many times the least leaves the picture at the top', () => {
    const { drawing } = curveOf(points);
    // The least is 4.50, 2.5 times that 11.25; marks at each 2.00, so the top is 12.00.
    expect(drawing.up.map(({ label }) => label.text)).toEqual(
      ['0', '2', '4', '6', '8', '10', '12'].map((pounds) => `£${pounds}.00`),
    );
    expect(drawing.points[0]!.up).toBe(1500);
    expect(drawing.points[3]).toMatchObject({ at: 333, up: 375, full: true, current: false });
    expect(drawing.points[5]).toMatchObject({ at: 500, up: 500, full: false, current: true });
  });

  it('keeps this batch in the picture, and its marks in order, at any prices', () => {
    const outlay = fc.integer({ min: 0, max: 100_000 }).map((pence) => exact(pence).div(100));
    fc.assert(
      fc.property(fc.array(fc.tuple(outlay, fc.boolean()), { minLength: 6, maxLength: 60 }), (of) => {
        const random = of.map(([each, full], i) => ({ models: i + 1, outlay: each, full }));
        const shown = curveOf(random);
        expect(shown.drawing.points[5]!.up).toBeLessThanOrEqual(1000);
        expect(shown.drawing.up.length).toBeLessThanOrEqual(9);
        expect(shown.drawing.across.at(-1)!.at).toBeLessThanOrEqual(1000);
        const keys = leavesOf(shown).map(({ key }) => key);
        expect(new Set(keys).size).toBe(keys.length);
      }),
      { numRuns: 60 },
    );
  });

  it('in a terminal shows the full sizes and this batch alone', () => {
    expect(curveLines(curveOf(points), 60)).toEqual([
      'Packs are full at 4, 8 and 12 models.',
      'Models  Outlay, each  Packs',
      '     4         £4.50  full',
      '     6         £6.00  this batch',
      '     8         £4.50  full',
      '    12         £4.50  full',
    ]);
  });
});
