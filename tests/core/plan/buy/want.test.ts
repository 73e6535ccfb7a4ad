import { describe, expect, it } from 'vitest';
import { atOnce } from '../../../../src/core/in-pieces.ts';
import { type Buying, answeredOnce, buyByAmount, packsFor } from '../../../../src/core/plan/buy/want.ts';
import type { OnHand } from '../../../../src/core/plan/demand.ts';
import type { Offer } from '../../../../src/core/plan/supply/offers.ts';
import { exact, exactText, zero } from '../../../../src/core/quantity/exact.ts';
import { aMaterial, pack } from '../a-workspace.ts';
import { shopFor } from './shopping.ts';

const offer = (pack: number, holds: string, price?: string): Offer => ({
  pack,
  holds: exact(holds),
  ...(price === undefined ? {} : { price: exact(price) }),
});

describe('packs for what is missing', () => {
  const counts = (missing: string, ...open: readonly Offer[]) =>
    packsFor(exact(missing), open).map(({ offer, count }) => [offer.pack, count]);

  it('are the cheapest, and only those that are bought', () => {
    expect(counts('120', offer(0, '50', '5'), offer(1, '200', '14'))).toEqual([[1, 1]]);
  });

  it('are of the usual pack where no price is known', () => {
    expect(counts('120', offer(0, '50'), offer(1, '200'))).toEqual([[0, 3]]);
  });

  it('are none where nothing is missing, or nothing is for sale', () => {
    expect([counts('0', offer(0, '50')), counts('-1', offer(0, '50', '5')), counts('120')]).toEqual([
      [],
      [],
      [],
    ]);
  });
});

describe('what would be bought', () => {
  it('is worked out once for each choice of packs, an answer of none included', () => {
    const asked: number[] = [];
    const buying: Buying = function* (open) {
      yield;
      asked.push(open.length);
      return open.length === 0 ? undefined : { packs: [], fromStock: zero, left: zero };
    };
    const once = answeredOnce(buying);
    const [small, large, unpriced] = [offer(1, '50', '5'), offer(11, '200', '14'), offer(11, '200')];
    const answers = [
      [small],
      [large],
      [small, large],
      [unpriced],
      [],
      [small],
      [large],
      [small, large],
      [],
    ].map((open) => atOnce(once(open)));
    expect(asked).toEqual([1, 1, 2, 1, 0]);
    expect(answers[5]).toBe(answers[0]);
    expect(answers[8]).toBeUndefined();
  });

  it('cannot be said where packs are for sale, but none of those that are open', () => {
    const amount = { value: exact(5), unit: 'g' };
    const requirement = {
      material: 'felt',
      amount,
      usual: amount,
      unused: { value: zero, unit: 'g' },
      by: [],
    };
    const basket = (packs: string[], onHand?: OnHand) => {
      const felt = aMaterial('felt', { packs: packs.map((holds) => pack(holds)) });
      return atOnce(buyByAmount(requirement, felt, onHand)([]));
    };
    expect(basket(['50 g'])).toBeUndefined();
    expect(basket(['50 g'], { value: '5', unit: 'g' })?.packs).toEqual([]);
    expect(basket([])?.packs).toEqual([]);
  });
});

describe('stock', () => {
  const bought = (needs: string, stock: OnHand, more: object = {}) => {
    const felt = aMaterial('felt', { packs: [pack('500 g', '6.40 GBP')], ...more });
    const [purchase] = shopFor({
      needs: { felt: needs },
      materials: [felt],
      stock: { felt: stock },
    }).purchases;
    const { fromStock, packs, left, cost } = purchase!;
    const count = packs.reduce((sum, { count }) => sum + count, 0);
    return [exactText(fromStock.value), count, exactText(left.value), cost && exactText(cost)];
  };

  it('is taken first, in whatever unit it is counted', () => {
    expect(bought('600 g', { value: '1/10', unit: 'kg' })).toEqual(['100', 1, '0', '6.4']);
    expect(bought('600 g', { value: '0', unit: 'g' })).toEqual(['0', 2, '400', '12.8']);
    // 100 mL of 0.6 g/mL are 60 g: 440 + 60 = 500
    const density = { gramsPerMillilitre: '3/5' };
    expect(bought('560 g', { value: '100', unit: 'mL' }, { density })).toEqual(['60', 1, '0', '6.4']);
  });

  it('that is enough leaves nothing to buy, and costs nothing more', () => {
    expect(bought('600 g', { value: '600', unit: 'g' })).toEqual(['600', 0, '0', '0']);
    expect(bought('600 g', { value: '650', unit: 'g' })).toEqual(['600', 0, '50', '0']);
  });

  it('in whole packs counts all that they hold', () => {
    const each = { value: '500', unit: 'g' };
    expect(bought('1200 g', { pieces: [{ count: 2, each }] })).toEqual(['1000', 1, '300', '6.4']);
    expect(bought('1200 g', { pieces: [] })).toEqual(['0', 3, '300', '19.2']);
  });

  it('that is not enough has no cost where nobody sells the rest', () => {
    expect(bought('600 g', { value: '100', unit: 'g' }, { packs: [] })).toEqual(['100', 0, '0', undefined]);
    expect(bought('600 g', { value: '600', unit: 'g' }, { packs: [] })).toEqual(['600', 0, '0', '0']);
  });

  it('of what is free is not filled up, even where somebody sells it', () => {
    const some = { value: '100', unit: 'g' };
    expect(bought('600 g', some, { free: true, packs: [] })).toEqual(['100', 0, '0', '0']);
    expect(bought('600 g', some, { free: true })).toEqual(['100', 0, '0', '0']);
  });
});
