import { describe, expect, it } from 'vitest';
import {
  ceil,
  commonMeasure,
  decimalText,
  exact,
  exactText,
  floor,
  rational,
} from '../../../src/core/quantity/exact.ts';
import { printMeasure } from '../../../src/core/quantity/print.ts';
import {
  add,
  areaOf,
  compare,
  convert,
  isConvertible,
  isMassAndVolume,
  measure,
  ratio,
  times,
} from '../../../src/core/quantity/quantity.ts';
import { largestRemainder, roundTo, roundUpTo } from '../../../src/core/quantity/round.ts';

const of = (value: string, unit: string) => measure({ value, unit });

describe('exact numbers', () => {
  it.each([
    ['5/2', '2.5'],
    ['103/30', '103/30'],
    ['350', '350'],
    ['-1/8', '-0.125'],
    ['1/1000', '0.001'],
    ['0', '0'],
  ])('%s is printed %s', (number, text) => {
    expect(exactText(exact(number))).toBe(text);
    expect(exact(text).equals(exact(number))).toBe(true);
    expect(rational(exact(number))).toBe(number);
  });

  it.each(['1e3', '1_000', '', '1/0', '1.', '0x10', ' 1', '1/2/3'])('refuses %j as our own fault', (text) => {
    expect(() => exact(text)).toThrow('not an exact number');
  });

  it.each([0.5, Number.NaN, Infinity, 2 ** 60])('refuses the float %d', (number) => {
    expect(() => exact(number)).toThrow('not an exact number');
  });

  it('of several have a largest of which all are whole multiples', () => {
    const of = (...numbers: string[]) => rational(commonMeasure(numbers.map((number) => exact(number))));
    expect([of('28', '42'), of('3/2', '2'), of('0', '7'), of('0', '0'), of()]).toEqual([
      '14',
      '1/2',
      '7',
      '1',
      '1',
    ]);
  });

  it.each([
    [12345n, 2, '123.45'],
    [-5n, 2, '-0.05'],
    [0n, 2, '0.00'],
    [-7n, 0, '-7'],
  ])('%d with %d places is %s', (digits, places, text) => {
    expect(decimalText(digits, places)).toBe(text);
  });

  it('rounds to whole numbers below and above, and not beyond what a number can hold', () => {
    expect([ceil(exact('7/2')), floor(exact('7/2')), ceil(exact('-7/2')), floor(exact('-7/2'))]).toEqual([
      4, 3, -3, -4,
    ]);
    // 2^53 - 1 is the last whole number with no gap before the next (IEEE 754)
    expect(ceil(exact('9007199254740991'))).toBe(2 ** 53 - 1);
    expect(() => ceil(exact('9007199254740992'))).toThrow('too large');
    expect(() => floor(exact('-9007199254740992'))).toThrow('too large');
  });
});

describe('amounts with units', () => {
  it.each([
    ['1', 'kg', 'g', '1000 g'],
    ['1', 'L', 'cm³', '1000 cm³'],
    ['12', 'in', 'ft', '1 ft'],
    ['140', '°F', '°C', '60 °C'],
    ['60', '°C', '°F', '140 °F'],
    ['-40', '°F', '°C', '-40 °C'],
    ['1', 'US cup', 'US tbsp', '16 US tbsp'],
    ['50', '%', '%', '50 %'],
  ])('%s %s in %s is %s', (value, unit, to, expected) => {
    expect(printMeasure(convert(of(value, unit), to))).toBe(expected);
  });

  it('goes between mass and volume by the density and by nothing else', () => {
    const density = exact('3/5'); // 0.6 g/mL
    expect(printMeasure(convert(of('120', 'g'), 'mL', density))).toBe('200 mL');
    expect(printMeasure(convert(of('1', 'L'), 'kg', density))).toBe('0.6 kg');
    expect(() => convert(of('120', 'g'), 'mL')).toThrow('do not measure the same thing');
    expect(() => convert(of('120', 'g'), 'mm', density)).toThrow('do not measure the same thing');
  });

  it.each([
    ['g', 'kg', false, true, false],
    ['g', 'mL', false, false, true],
    ['US cup', 'lb', true, true, true],
    ['mm', 'mL', true, false, false],
    ['g', 'mm', true, false, false],
  ])('%s and %s, density known: %s', (a, b, hasDensity, convertible, massAndVolume) => {
    for (const [from, to] of [
      [a, b],
      [b, a],
    ] as const) {
      expect(isConvertible(from, to, hasDensity)).toBe(convertible);
      expect(isMassAndVolume(from, to)).toBe(massAndVolume);
      // the promise: what is convertible converts, and nothing else does
      const converting = () => convert(of('1', from), to, hasDensity ? exact('3/5') : undefined);
      if (convertible) converting();
      else expect(converting).toThrow('do not measure the same thing');
    }
  });

  it('are only those of the table', () => {
    expect(() => convert(of('1', 'stone'), 'kg')).toThrow('no such unit');
  });

  it('adds, multiplies, compares and divides exactly', () => {
    expect(printMeasure(add(of('1', 'kg'), of('1', 'g')))).toBe('1.001 kg');
    expect(printMeasure(times(of('1', 'g'), exact('1/3')))).toBe('1/3 g');
    expect(compare(of('1', 'in'), of('25.4', 'mm'))).toBe(0);
    expect(compare(of('1', 'in'), of('25', 'mm'))).toBeGreaterThan(0);
    expect(rational(ratio(of('1', 'L'), of('300', 'mL')))).toBe('10/3');
    expect(() => ratio(of('1', 'L'), of('0', 'mL'))).toThrow('a share of nothing');
    expect(() => add(of('1', 'kg'), of('1', 'mm'))).toThrow('do not measure the same thing');
  });

  it('multiplies the two sides of a piece, whatever their units', () => {
    const sides = [
      { value: '15', unit: 'cm' },
      { value: '100', unit: 'mm' },
    ];
    expect(printMeasure(areaOf({ sides }))).toBe('15000 mm²');
    expect(() => areaOf({ sides: sides.slice(1) })).toThrow('two sides');
  });
});

describe('rounding', () => {
  it.each([
    // 103.1 g on a scale that reads 0.5 g
    ['103.1', '1/2', '103.5', '103'],
    ['103', '1', '103', '103'],
    ['102.5', '5', '105', '105'],
    ['-2.5', '1', '-2', '-3'],
  ])('%s to %s is %s up and %s near', (value, step, up, near) => {
    expect(exactText(roundUpTo(exact(value), exact(step)))).toBe(up);
    expect(exactText(roundTo(exact(value), exact(step)))).toBe(near);
  });

  it.each([
    [10, ['1', '1', '1'], [4, 3, 3]],
    [5, ['3', '7'], [2, 3]],
    [7, ['1/2', '1/3', '1/6'], [4, 2, 1]],
    [4, ['0', '0'], [2, 2]],
    [0, ['1', '2'], [0, 0]],
    [3, ['0', '1'], [0, 3]],
  ])('%d shared by %j is %j', (total, weights, shares) => {
    expect(
      largestRemainder(
        total,
        weights.map((weight) => exact(weight)),
      ),
    ).toEqual(shares);
  });
});
