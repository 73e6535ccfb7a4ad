import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact } from '../../../src/core/quantity/exact.ts';
import { compare, ratio } from '../../../src/core/quantity/quantity.ts';
import {
  roundedDown,
  roundedUp,
  showAmount,
  showAsWritten,
  showExactly,
  showSize,
  usualReading,
} from '../../../src/showing/text/amounts.ts';
import { properly } from '../../../src/showing/text/author-text.ts';

const nbsp = '\u00a0';
const spaced = (text: string): string => text.replaceAll(' ', nbsp);
const of = (value: string, unit: string) => ({ value: exact(value), unit });

describe('an amount is rounded up to what the tool reads, and printed in a handy unit', () => {
  // Without a tool: 1 g, 5 mL, 1 mm (common practice, no source).
  it.each([
    ['350', 'g', undefined, '350 g'],
    ['6299/5', 'g', undefined, '1.26 kg'], //      1259.8 -> 1260 g
    ['1000', 'g', undefined, '1 kg'],
    ['9991/10', 'g', undefined, '1 kg'], //         999.1 -> 1000 g
    ['1/3', 'g', undefined, '1 g'],
    ['1/3', 'g', of('1/10', 'g'), '0.4 g'],
    ['1/20', 'g', of('1/1000', 'g'), '50 mg'],
    ['2', 'oz', undefined, '57 g'], //            56.699… g
    ['1080', 'mL', undefined, '1.08 L'],
    ['40/3', 'mL', undefined, '15 mL'],
    ['40/3', 'mL', of('1', 'mL'), '14 mL'],
    ['72/10', 'L', of('10', 'mL'), '7.2 L'],
    ['1', 'US cup', undefined, '240 mL'], //       236.588… mL
    ['2160', 'mm', undefined, '2.16 m'],
    ['5/2', 'in', undefined, '64 mm'], //            63.5 mm
    ['180000', 'mm²', undefined, '1800 cm²'],
    ['1234567', 'mm²', undefined, '1.24 m²'],
    ['43/2', '', undefined, '22'],
    ['12000', '', undefined, '12,000'],
    ['0', 'g', undefined, '0 g'],
  ])('%s %s, reading %o: %s', (value, unit, reading, text) => {
    expect(showAmount(of(value, unit), reading, 'metric')).toBe(spaced(text));
  });

  it('never shows less than there is, nor a reading more, and always a multiple of the reading', () => {
    const units = fc.constantFrom('g', 'kg', 'mL', 'L', 'mm', 'm', 'oz', 'US cup', 'in');
    fc.assert(
      fc.property(fc.nat(10_000_000), fc.integer({ min: 1, max: 999 }), units, (n, d, unit) => {
        const amount = of(`${n}/${d}`, unit);
        const reading = usualReading(unit)!;
        const shown = roundedUp(amount, undefined, 'metric');
        expect(compare(shown, amount)).toBeGreaterThanOrEqual(0);
        expect(ratio(shown, reading).d).toBe(1n);
        expect(compare({ ...shown, value: shown.value.sub(reading.value) }, amount)).toBeLessThan(0);
      }),
    );
  });

  it('what is left over is rounded down', () => {
    expect(showExactly(roundedDown(of('2399/10', 'g'), 'metric'))).toBe(`239${nbsp}g`);
    expect(showExactly(roundedDown(of('7', ''), 'metric'))).toBe('7');
  });
});

describe('what an author wrote is printed properly', () => {
  it('a pack and a piece keep the unit of their author', () => {
    expect(showAsWritten({ value: '1', unit: 'lb' })).toBe(`1${nbsp}lb`);
    expect(showAsWritten({ value: '3/2', unit: 'L' })).toBe(`1.5${nbsp}L`);
    const sides = [
      { value: '15', unit: 'cm' },
      { value: '5/2', unit: 'in' },
    ];
    expect(showSize({ sides })).toBe(`15${nbsp}cm × 63.5${nbsp}mm`);
  });

  it.each([
    ['60 °C', '60~°C'],
    ['15 mm ± 3 mm', '15~mm ± 3~mm'],
    ['150 mm x 100 mm', '150~mm × 100~mm'],
    ['15mm x 30 mm x 5 mm', '15~mm × 30~mm × 5~mm'],
    ['0.8–1.0 mm thick', '0.8–1~mm thick'],
    ['1.05 g', '1.05~g'],
    ['version 1.2.0', 'version 1.2.0'],
    ['bloom 200–250', 'bloom 200–250'],
    ['6 mm inside, 8 mm outside', '6~mm inside, 8~mm outside'],
    ['2 minutes later', '2 minutes later'],
    ['10 small ones', '10 small ones'],
  ])('%s', (written, printed) => {
    expect(properly(written)).toBe(printed.replaceAll('~', nbsp));
  });
});
