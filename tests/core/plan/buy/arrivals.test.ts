import { describe, expect, it } from 'vitest';
import { arrivalsOf, datedDeliveries } from '../../../../src/core/plan/buy/arrivals.ts';
import { momentOf } from '../../../../src/core/plan/time/moment.ts';
import { datedClock, referenceClock } from '../../../../src/core/plan/time/clock.ts';
import { isoTime } from '../../../../src/core/time/iso-time.ts';
import { aMaterial, aProgram, money, pack, time } from '../a-workspace.ts';
import { type Errand, shopFor, shopOf } from './shopping.ts';

/** Monday to Friday, 09:00–12:30 and 13:00–17:00; 26 November 2026 is a Thursday. */
const suppliers = {
  quick: { name: 'quick', arrivesIn: time('1 working days') },
  slow: { name: 'slow', arrivesIn: time('3 working days') },
  silent: { name: 'silent', delivery: money('2 GBP') },
};
const program = aProgram({ suppliers });
const minute = (wall: string) => {
  const said = momentOf({ option: '--start', time: wall }, '2026-11-25', program);
  if (typeof said !== 'number') throw new Error(wall);
  return said;
};
const wall = (at: number | undefined) =>
  at === undefined ? undefined : isoTime(program.zone, at).slice(5, 16).replace('T', ' ');

const from = (supplier: string, more: object = {}) => pack('1 m', '4 GBP', { from: supplier, ...more });
const felt = aMaterial('felt', { packs: [from('slow')] });
const tape = aMaterial('tape', { packs: [from('quick')] });

function errand(...materials: Errand['materials']): Errand {
  return {
    materials,
    program: { suppliers },
    needs: Object.fromEntries(materials.map(({ id }) => [id, '1 m'])),
  };
}
function arriving(asked: Errand, start: string) {
  const arrivals = arrivalsOf(shopFor(asked), [], shopOf(asked), datedClock(program, minute(start)));
  return [...arrivals].map(([material, { at }]) => [material, wall(at)]);
}
function delivered(asked: Errand, start: string, neededBy?: Readonly<Record<string, string>>) {
  const needed = neededBy && new Map(Object.entries(neededBy).map(([id, by]) => [id, minute(by)]));
  const clock = datedClock(program, minute(start));
  return datedDeliveries(shopFor(asked), shopOf(asked), clock, needed).map(
    ({ supplier, ordered, arrives }) => [supplier, wall(ordered), wall(arrives)],
  );
}

describe('what is ordered', () => {
  it('is there after so many working days, at opening', () => {
    expect(arriving(errand(felt, tape), '2026-11-26T10:00')).toEqual([
      ['felt', '12-01 09:00'],
      ['tape', '11-27 09:00'],
    ]);
  });

  it('goes out at the start, at the next opening where that is after hours', () => {
    expect(delivered(errand(tape), '2026-11-26T10:00')).toEqual([['quick', '11-26 10:00', '11-27 09:00']]);
    expect(delivered(errand(tape), '2026-11-26T18:00')).toEqual([['quick', '11-27 09:00', '11-30 09:00']]);
  });

  it('comes when the pack itself says, before what its supplier says, by the clock where that is no working days', () => {
    const own = aMaterial('glue', { packs: [from('slow', { arrivesIn: time('36 h') })] });
    expect(arriving(errand(own), '2026-11-26T10:00')).toEqual([['glue', '11-27 22:00']]);
  });

  it('is there with the slowest of its packs', () => {
    // 3 m: a roll of 2 m and one of 1 m cost least together
    const lint = aMaterial('lint', {
      packs: [from('quick'), pack('2 m', '5 GBP', { from: 'slow' })],
    });
    const asked = { ...errand(lint), needs: { lint: '3 m' } };
    expect(arriving(asked, '2026-11-26T10:00')).toEqual([['lint', '12-01 09:00']]);
    expect(delivered(asked, '2026-11-26T10:00')).toEqual([
      ['quick', '11-26 10:00', '11-27 09:00'],
      ['slow', '11-26 10:00', '12-01 09:00'],
    ]);
  });

  it('is brought with the slowest of what a supplier brings', () => {
    const quicker = aMaterial('glue', { packs: [from('slow', { arrivesIn: time('36 h') })] });
    for (const materials of [
      [quicker, felt],
      [felt, quicker],
    ])
      expect(delivered(errand(...materials), '2026-11-26T10:00')).toEqual([
        ['slow', '11-26 10:00', '12-01 09:00'],
      ]);
  });

  it('is there at no known time where nobody says, and is then not waited for', () => {
    const materials = [
      aMaterial('wax', { packs: [from('silent')] }),
      aMaterial('wool', { packs: [from('who-knows')] }),
      aMaterial('pins', { packs: [pack('1 m', '1 GBP')] }),
    ];
    expect(arriving(errand(...materials), '2026-11-26T10:00')).toEqual([]);
    expect(delivered(errand(...materials), '2026-11-26T10:00')).toEqual([
      ['silent', '11-26 10:00', undefined],
      ['who-knows', '11-26 10:00', undefined],
      [undefined, '11-26 10:00', undefined],
    ]);
  });

  it('is at hand in the reference week, which has no dates', () => {
    const bought = shopFor(errand(felt));
    const clock = referenceClock(program);
    expect(arrivalsOf(bought, [], shopOf(errand(felt)), clock).size).toBe(0);
    expect(datedDeliveries(bought, shopOf(errand(felt)), clock)).toEqual(bought.deliveries);
  });
});

describe('what is needed by a time', () => {
  it('is ordered on the last working day on which it still comes then, to the minute', () => {
    const by = (needed: string) => delivered(errand(felt), '2026-11-25T09:00', { felt: needed });
    expect(by('2026-12-03T09:00')).toEqual([['slow', '11-30 09:00', '12-03 09:00']]);
    expect(by('2026-12-03T08:59')).toEqual([['slow', '11-27 09:00', '12-02 09:00']]);
  });

  it('is ordered with the rest from the same supplier, early enough for all', () => {
    const wool = aMaterial('wool', { packs: [from('slow')] });
    expect(
      delivered(errand(felt, wool), '2026-11-25T09:00', {
        felt: '2026-12-10T09:00',
        wool: '2026-12-03T12:00',
      }),
    ).toEqual([['slow', '11-30 09:00', '12-03 09:00']]);
  });

  it('is ordered by what this supplier brings and somebody waits for, and by nothing else', () => {
    // wool is from the same supplier and not waited for; tape is needed sooner, from another
    const wool = aMaterial('wool', { packs: [from('slow')] });
    const needed = { felt: '2026-12-10T09:00', tape: '2026-12-01T09:00' };
    expect(delivered(errand(felt, wool, tape), '2026-11-25T09:00', needed)).toEqual([
      ['quick', '11-30 09:00', '12-01 09:00'],
      ['slow', '12-07 09:00', '12-10 09:00'],
    ]);
  });

  it('is ordered at once where nothing waits for it, or it cannot be in time', () => {
    expect(delivered(errand(felt), '2026-11-25T09:00', {})).toEqual([['slow', '11-25 09:00', '11-30 09:00']]);
    expect(delivered(errand(felt), '2026-11-25T09:00', { felt: '2026-11-26T09:00' })).toEqual([
      ['slow', '11-25 09:00', '11-30 09:00'],
    ]);
  });

  it('is ordered on the day itself where nobody says how long it takes', () => {
    const wax = aMaterial('wax', { packs: [from('silent')] });
    expect(delivered(errand(wax), '2026-11-25T09:00', { wax: '2026-11-27T10:00' })).toEqual([
      ['silent', '11-27 09:00', undefined],
    ]);
  });
});
