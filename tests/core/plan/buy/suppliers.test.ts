import { describe, expect, it } from 'vitest';
import type { Material } from '../../../../src/core/model/material.ts';
import { knowsCharge } from '../../../../src/core/plan/buy/deliveries.ts';
import { exactText } from '../../../../src/core/quantity/exact.ts';
import { aMaterial, aProgram, money, pack } from '../a-workspace.ts';
import { shopFor } from './shopping.ts';

/** `sold('felt', ['4', 'near'], ['3', 'far'])`: packs of a metre. */
function sold(id: string, ...offers: readonly (readonly [price: string, from?: string])[]): Material {
  return aMaterial(id, {
    packs: offers.map(([price, from]) => pack('1 m', `${price} GBP`, from === undefined ? {} : { from })),
  });
}
const charging = (...ids: readonly string[]) =>
  Object.fromEntries(ids.map((id) => [id, { name: id, delivery: money('5 GBP') }]));

function deliveriesOf(materials: readonly Material[], program: Parameters<typeof shopFor>[0]['program']) {
  const needs = Object.fromEntries(materials.map(({ id }) => [id, '1 m']));
  return shopFor({ needs, materials, ...(program ? { program } : {}) }).deliveries.map(
    ({ supplier, goods, charge }) => [supplier, exactText(goods), exactText(charge)],
  );
}

describe('who is bought from', () => {
  it('is the one that the program lists first, where two cost the same', () => {
    const felt = sold('felt', ['4', 'far'], ['4', 'near']);
    expect(deliveriesOf([felt], { suppliers: charging('near', 'far') })).toEqual([['near', '4', '5']]);
  });

  it('are few rather than many, where that costs the same', () => {
    // felt from a and tape from b are 4 + 5 and 1 + 5; both from c 4.50 + 5.50 + 5
    const materials = [sold('felt', ['4', 'a'], ['4.50', 'c']), sold('tape', ['1', 'b'], ['5.50', 'c'])];
    expect(deliveriesOf(materials, { suppliers: charging('a', 'b', 'c') })).toEqual([['c', '10', '5']]);
  });

  it('are two, where the second saves more than it charges', () => {
    // 4 + 1 and twice 5 for delivery are 15; all of it from near is 4 + 7 + 5 = 16
    const materials = [sold('felt', ['4', 'near']), sold('tape', ['7', 'near'], ['1', 'far'])];
    expect(deliveriesOf(materials, { suppliers: charging('far', 'near') })).toEqual([
      ['far', '1', '5'],
      ['near', '4', '5'],
    ]);
  });

  it('counts the delivery that a full basket saves', () => {
    // near brings for nothing from 10 on: 4 + 6 = 10, against 4 + 5 + 1 from both
    const suppliers = {
      ...charging('far'),
      near: { ...charging('near')['near']!, freeOver: money('10 GBP') },
    };
    const materials = [sold('felt', ['4', 'near']), sold('tape', ['6', 'near'], ['1', 'far'])];
    expect(deliveriesOf(materials, { suppliers })).toEqual([['near', '10', '0']]);
  });

  it('is whoever is cheapest and brings it for nothing, be they unnamed or unknown to the program', () => {
    const suppliers = { ...charging('near'), gift: { name: 'gift', delivery: money('0 GBP') } };
    const materials = [
      sold('felt', ['4', 'near'], ['8.99']),
      sold('tape', ['1', 'near'], ['0.50', 'market']),
      sold('glue', ['9', 'near'], ['3', 'gift']),
    ];
    // 8.99 against 4 + 5: what the program knows comes first, in its order
    expect(deliveriesOf(materials, { suppliers })).toEqual([
      ['gift', '3', '0'],
      [undefined, '8.99', '0'],
      ['market', '0.5', '0'],
    ]);
  });

  it('is never somebody of whom the charge is not known, where another is as cheap', () => {
    const suppliers = { abroad: { name: 'abroad', delivery: money('9 USD') }, near: { name: 'near' } };
    const felt = sold('felt', ['4', 'abroad'], ['4', 'near']);
    expect(deliveriesOf([felt], { suppliers })).toEqual([['near', '4', '0']]);
    const [first, other] = ['abroad', 'near'].map((id) => knowsCharge(id, aProgram({ suppliers })));
    expect([first, other, knowsCharge(undefined, aProgram({ suppliers }))]).toEqual([false, true, true]);
    const exchange = { USD: { rate: '4/5', on: '2026-10-01' } };
    expect(knowsCharge('abroad', aProgram({ suppliers, exchange }))).toBe(true);
  });

  it('is left to the packs alone above eight who charge for delivery', () => {
    // each of so many things is a penny cheaper at its own supplier than at the first
    const shops = (count: number) => Array.from({ length: count }, (_, i) => `shop-${i}`);
    const from = (count: number, listed = count) =>
      deliveriesOf(
        shops(count).map((id, i) => sold(`thing-${i}`, ['2', 'shop-0'], ['1.99', id])),
        { suppliers: charging(...shops(listed)) },
      ).length;
    expect([from(8), from(9)]).toEqual([1, 9]);
    // who has nothing of what is needed does not count
    expect(from(8, 40)).toBe(1);
  });

  it('is asked for no more than is sold: what nobody prices is bought where it is offered', () => {
    const lint = aMaterial('lint', { packs: [pack('1 m', undefined, { from: 'far' })] });
    expect(deliveriesOf([sold('felt', ['4', 'near']), lint], { suppliers: charging('near', 'far') })).toEqual(
      [
        ['near', '4', '5'],
        ['far', '0', '5'],
      ],
    );
  });

  it('is chosen with the delivery that what nobody prices costs anyway', () => {
    // lint comes from far, for 5: felt for 4.50 with it is less than felt for 4 with 5 for delivery, but not felt for 20
    const lint = aMaterial('lint', { packs: [pack('1 m', undefined, { from: 'far' })] });
    const shop = (price: string) =>
      deliveriesOf([sold('felt', ['4', 'near'], [price, 'far']), lint], {
        suppliers: charging('near', 'far'),
      });
    expect(shop('4.50')).toEqual([['far', '4.5', '5']]);
    expect(shop('20')).toEqual([
      ['near', '4', '5'],
      ['far', '0', '5'],
    ]);
  });

  it('is the one whose pack is listed first, among those who charge nothing', () => {
    const suppliers = { gift: { name: 'gift', delivery: money('0 GBP') }, near: { name: 'near' } };
    expect(deliveriesOf([sold('felt', ['4', 'gift'], ['4', 'near'])], { suppliers })[0]).toEqual([
      'gift',
      '4',
      '0',
    ]);
    expect(deliveriesOf([sold('felt', ['4', 'near'], ['4', 'gift'])], { suppliers })[0]).toEqual([
      'near',
      '4',
      '0',
    ]);
  });

  it('is left unsaid where the pack does not say', () => {
    const [delivery] = shopFor({ needs: { felt: '1 m' }, materials: [sold('felt', ['4'])] }).deliveries;
    expect(Object.keys(delivery!)).toEqual(['goods', 'charge']);
  });

  it('does not matter for what is in stock already', () => {
    const materials = [sold('felt', ['4', 'near']), sold('tape', ['1', 'far'], ['2', 'near'])];
    const { purchases, deliveries, cutting } = shopFor({
      needs: { felt: '1 m', tape: '1 m' },
      materials,
      program: { suppliers: charging('near', 'far') },
      stock: { felt: { value: '1', unit: 'm' } },
    });
    expect(purchases.map(({ packs }) => packs)).toEqual([[], [{ pack: 0, count: 1 }]]);
    expect(deliveries.map(({ supplier }) => supplier)).toEqual(['far']);
    expect(cutting).toEqual([]);
  });
});
