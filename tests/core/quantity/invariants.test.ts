import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact, rational } from '../../../src/core/quantity/exact.ts';
import { printAmount, printHolding, printMeasure, printSize } from '../../../src/core/quantity/print.ts';
import { convert, measure, quantity as quantityOf } from '../../../src/core/quantity/quantity.ts';
import * as readers from '../../../src/core/quantity/read.ts';
import { problemCodes } from '../../../src/core/quantity/problem.ts';
import { largestRemainder } from '../../../src/core/quantity/round.ts';
import { spellingsOf } from '../../../src/core/quantity/spellings.ts';
import { units } from '../../../src/core/quantity/units.ts';

const { readAmount, readHolding, readQuantity, readSize } = readers;
const fraction = fc
  .tuple(fc.bigInt({ min: 0n, max: 10n ** 12n }), fc.bigInt({ min: 1n, max: 10n ** 6n }))
  .map(([n, d]) => rational(exact(`${n}/${d}`)));
const positive = fraction.filter((value) => value !== '0');
const unit = fc.constantFrom(...units.map(({ symbol }) => symbol));
const length = fc.constantFrom(...units.filter((u) => u.dimension === 'length').map(({ symbol }) => symbol));
const quantity = fc.record({ value: fraction, unit });
const size = fc.record({
  sides: fc.array(fc.record({ value: positive, unit: length }), { minLength: 2, maxLength: 3 }),
});

describe('reading what was printed gives the same back', () => {
  it('for an amount', () => {
    fc.assert(
      fc.property(quantity, (value) => {
        expect(readQuantity(printMeasure(measure(value)))).toEqual({ ok: true, value });
        expect(quantityOf(measure(value))).toEqual(value);
      }),
    );
  });

  it('for a range, with its usual amount', () => {
    fc.assert(
      fc.property(fc.tuple(fraction, fraction, fraction), unit, (values, symbol) => {
        const [least, usual, most] = [...values].sort((a, b) => exact(a).compare(exact(b)));
        const value = { least: least!, usual: usual!, most: most!, unit: symbol };
        const printedUsual = printMeasure(measure({ value: value.usual, unit: symbol }));
        expect(readAmount(printAmount(value), printedUsual)).toEqual({ ok: true, value });
      }),
    );
  });

  it('for a size', () => {
    fc.assert(
      fc.property(size, (value) => {
        expect(readSize(printSize(value))).toEqual({ ok: true, value });
      }),
    );
  });

  it('for a pack', () => {
    const holding = fc.record({
      count: fc.integer({ min: 1, max: 1000 }),
      each: fc.oneof(fc.record({ value: positive, unit }), size),
    });
    fc.assert(
      fc.property(holding, (value) => {
        expect(readHolding(printHolding(value))).toEqual({ ok: true, value });
      }),
    );
  });

  it('for every spelling of every unit', () => {
    for (const unit of units) {
      expect(spellingsOf(unit)).toContain(unit.symbol);
      for (const spelling of spellingsOf(unit)) {
        expect(readQuantity(`12 ${spelling}`)).toEqual({
          ok: true,
          value: { value: '12', unit: unit.symbol },
        });
      }
    }
  });
});

it('no spelling stands for two units', () => {
  const all = units.flatMap(spellingsOf);
  expect(all.filter((spelling, index) => all.indexOf(spelling) !== index)).toEqual([]);
});

it('converting there and back changes nothing', () => {
  const pair = fc
    .tuple(fc.constantFrom(...units), fc.constantFrom(...units))
    .filter(([a, b]) => a.dimension === b.dimension);
  fc.assert(
    fc.property(pair, fraction, ([a, b], value) => {
      const there = convert(measure({ value, unit: a.symbol }), b.symbol);
      expect(rational(convert(there, a.symbol).value)).toBe(value);
    }),
  );
});

it('shares by largest remainder add up, and each is within one of its exact share', () => {
  const weights = fc.array(fraction, { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 100_000 }), weights, (total, texts) => {
      const exacts = texts.map((text) => exact(text));
      const shares = largestRemainder(total, exacts);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBe(total);
      const sum = exacts.reduce((all, weight) => all.add(weight), exact(0));
      if (sum.n === 0n) return;
      for (const [i, share] of shares.entries()) {
        const exactShare = exacts[i]!.mul(exact(total)).div(sum);
        expect(exactShare.sub(exact(share)).abs().lt(1)).toBe(true);
      }
    }),
  );
});

describe('any text is read or refused, never thrown at', () => {
  const pieces = [
    '1',
    '0',
    '1/2',
    ' ',
    '.',
    ',',
    '-',
    '–',
    '±',
    ' x ',
    ' to ',
    'g',
    'mm',
    'cup',
    '%',
    '½',
    ':',
    '/',
    'e',
    '_',
    'of',
    '°C',
    'h',
    'min',
    'P',
    'T',
  ];
  const likely = fc.array(fc.constantFrom(...pieces), { maxLength: 10 }).map((parts) => parts.join(''));
  const anyText = fc.oneof(fc.string(), fc.string({ unit: 'binary' }), likely);
  const all = Object.entries(readers).filter(([name]) => name !== 'readLeading') as [
    string,
    (text: string) => readers.Reading<unknown>,
  ][];

  it.each(all)('%s', (_, reader) => {
    fc.assert(
      fc.property(anyText, (text) => {
        const reading = reader(text);
        if (!reading.ok) {
          expect(problemCodes).toContain(reading.problem.code);
          expect(reading.problem.facts['text']).toBe(text.trim());
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('readLeading', () => {
    fc.assert(
      fc.property(anyText, (text) => void readers.readLeading(text)),
      { numRuns: 2000 },
    );
  });
});
