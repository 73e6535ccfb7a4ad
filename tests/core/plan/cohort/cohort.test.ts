import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupSizes } from '../../../../src/core/plan/cohort/groups.ts';
import type { Share } from '../../../../src/core/model/module.ts';
import { modelsNeeded } from '../../../../src/core/plan/cohort/models-needed.ts';
import { rotation, roundsWithin, seatsNeeded } from '../../../../src/core/plan/cohort/rotation.ts';

describe('groups', () => {
  it.each([
    [20, 4, [4, 4, 4, 4, 4]],
    [21, 4, [4, 4, 4, 3, 3, 3]],
    [20, 6, [5, 5, 5, 5]],
    [5, 6, [5]],
    [0, 6, []],
  ])('of %i people, at most %i: %j', (people, most, sizes) => {
    expect(groupSizes(people, most)).toEqual(sizes);
  });

  it('hold everybody, are never too large, and differ by one at most', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 50 }), (people, most) => {
        const sizes = groupSizes(people, most);
        expect(sizes.reduce((a, b) => a + b, 0)).toBe(people);
        expect(Math.max(...sizes)).toBeLessThanOrEqual(most);
        expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe('a circuit', () => {
  const of = (groups: number) => rotation({ groups, stations: 5, minutes: 25, changeOver: 5 });

  // worked by hand: 5 x 25 + 4 x 5 = 145; a sixth group wants a sixth round, 6 x 25 + 5 x 5 = 175
  it('of 5 stations of 25 min with 5 min to change takes 5 groups 145 min, 6 groups 175 min with a rest', () => {
    expect(of(5).minutes).toBe(145);
    expect(of(6).minutes).toBe(175);
    expect(
      of(6)
        .stationOf.flat()
        .filter((station) => station === undefined),
    ).toHaveLength(6);
  });

  it('brings every group to every station once, never two to one', () => {
    const few = fc.integer({ min: 1, max: 12 });
    fc.assert(
      fc.property(few, few, (groups, stations) => {
        const { stationOf } = rotation({ groups, stations, minutes: 10, changeOver: 2 });
        for (const round of stationOf) {
          const there = round.filter((station) => station !== undefined);
          expect(new Set(there).size).toBe(there.length);
        }
        for (let group = 0; group < groups; group++) {
          const seen = stationOf.flatMap((round) => round[group] ?? []);
          expect(seen.sort((a, b) => a - b)).toEqual(Array.from({ length: stations }, (_, i) => i));
        }
      }),
    );
  });

  it('of one station takes the groups in their order', () => {
    const { stationOf } = rotation({ groups: 4, stations: 1, minutes: 10, changeOver: 2 });
    expect(stationOf.map((round) => round.indexOf(0))).toEqual([0, 1, 2, 3]);
  });

  it('needs so many seats that everybody has a turn in time', () => {
    expect(roundsWithin(145, 25, 5)).toBe(5);
    expect(roundsWithin(144, 25, 5)).toBe(4);
    expect(seatsNeeded(20, 145, { minutes: 25, changeOver: 5 })).toBe(4);
    expect(seatsNeeded(21, 145, { minutes: 25, changeOver: 5 })).toBe(5);
    expect(seatsNeeded(4, 20, { minutes: 25, changeOver: 5 })).toBeUndefined();
  });
});

describe('models for 20 people with 3 uses each, 2 seats with 2 people, 5 rounds', () => {
  const sharing = { people: 20, uses: 3, seats: 2, atOne: 2, rounds: 5 };
  // worked by hand: 60 uses; 30 at each seat
  it.each<[number, Share, number]>([
    [12, 'mixed', 5],
    [12, 'whole', 5],
    [12, 'seat', 6],
    [12, 'own', 20],
    [10, 'mixed', 6],
    [10, 'whole', 7],
    [2, 'whole', 40],
    [2, 'own', 40],
    [100, 'mixed', 2],
    [Infinity, 'mixed', 2],
    [Infinity, 'own', 20],
  ])('that last %i uses, %s: %i', (lasts, share, models) => {
    expect(modelsNeeded(share, { ...sharing, lasts })).toBe(models);
  });
});
