import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planAt } from '../../../src/core/model/plan-at.ts';
import { lineOf } from '../../../src/core/plan/demand/line.ts';
import { plannedLine } from '../../../src/core/plan/demand/planned-line.ts';
import { exact, zero } from '../../../src/core/quantity/exact.ts';
import { compare, convert } from '../../../src/core/quantity/quantity.ts';
import { showAmount, showSize } from '../../../src/showing/text/amounts.ts';
import { areaNumbers, showLength, showRule } from '../../../src/showing/cutting/cut-lengths.ts';
import { roundedTotal, sharesOf, needOf } from '../../../src/showing/plan/shares.ts';
import { showMaterials } from '../../../src/showing/plan/show-materials.ts';
import { inSystems } from '../../../src/showing/text/systems.ts';
import { showSetting } from '../../../src/showing/text/temperatures.ts';
import { bench, gelBlock } from '../bench.ts';
import { plain } from '../by-hand.ts';

const of = (value: string, unit: string) => ({ value: exact(value), unit });
const us = (value: string, unit: string, reading?: ReturnType<typeof of>): string =>
  plain(showAmount(of(value, unit), reading, 'US'));
const inUnits = (units: 'metric' | 'US' | 'both') => ({ ...bench, program: { ...bench.program, units } });

describe('an amount in US customary measures is rounded up to what they read', () => {
  // Factors: NIST Handbook 44 (2024), App. C: 1 oz = 28.349 523 125 g, 1 lb = 16 oz, 1 US cup = 236.588 236 5 mL
  // = 16 tbsp = 48 tsp, 1 quart = 4 cups. Steps: 1/8 oz, 1/4 tsp, 1/2 tbsp, 1/4 cup (common practice, no source).
  it.each([
    ['350', 'g', '12 3/8 oz'], //                12.3458… oz
    ['1260', 'g', '2 lb 12 1/2 oz'], //          44.4452… oz = 2 lb 12.44… oz
    ['28.349523125', 'g', '1 oz'],
    ['2', 'g', '2 g'], //                        1/8 oz is 3.5 g: no scale in ounces reads so little
    ['453.59237', 'g', '1 lb'],
    ['5', 'mL', '1 1/4 US tsp'], //              1.0144… tsp
    ['20', 'mL', '1 US tbsp + 1 1/4 tsp'], //    4.0576… tsp -> 4 1/4 tsp
    ['100', 'mL', '1/3 US cup + 1 1/2 tbsp'], // 20.288… tsp -> 20 1/2 tsp = 16 + 4 1/2
    ['236.5882365', 'mL', '1 US cup'],
    ['535', 'mL', '2 1/4 US cups + 1/2 tbsp'], // 36.18… tbsp -> 36 1/2 tbsp
    ['5', 'L', '5 1/4 US quarts + 1/4 cup'], //  21.13… cups -> 21 1/4 cups
  ])('%s %s: %s', (value, unit, text) => {
    expect(us(value, unit)).toBe(text);
  });

  // 1 in = 25.4 mm, NIST SP 811 (2008), App. B.8
  it.each([
    ['64', 'mm', '2 9/16 in'], //                2.5196… in
    ['6', 'mm', '6 mm'], //                      less than eight sixteenths
    ['1828.8', 'mm', '6 ft'],
    ['6640', 'mm', '21 ft 9 7/16 in'], //        261.417… in -> 261 7/16
    ['100', 'cm²', '16 in²'], //                 15.5000… in²
    ['2', 'm²', '21 3/4 ft²'], //                21.527… ft²
    ['12', '', '12'],
  ])('%s %s: %s', (value, unit, text) => {
    expect(us(value, unit)).toBe(text);
  });

  it('a syringe stays a syringe: spoons do not read a tenth of a millilitre', () => {
    expect(us('2', 'mL', of('1/10', 'mL'))).toBe('2 mL');
  });

  const fractions: Readonly<Record<string, readonly string[]>> = {
    lb: [],
    oz: ['2', '4', '8'],
    quart: ['2', '4'],
    quarts: ['2', '4'],
    cup: ['2', '3', '4'],
    cups: ['2', '3', '4'],
    tbsp: ['2'],
    tsp: ['2', '4'],
    ft: [],
    in: ['2', '4', '8', '16'],
    'in²': [],
    'ft²': ['2', '4'],
  };

  it('has the fractions alone that rules, scales, cups and spoons have, and is never less', () => {
    const units = fc.constantFrom('g', 'kg', 'mL', 'L', 'mm', 'm', 'cm²', 'm²');
    fc.assert(
      fc.property(fc.nat(1_000_000), fc.integer({ min: 1, max: 999 }), units, (n, d, unit) => {
        const text = plain(showAmount(of(`${n}/${d}`, unit), undefined, 'US'));
        const terms = text.replaceAll('US ', '').split(/ \+ |(?<=[a-z²]) (?=\d)/);
        for (const term of terms) {
          const [, below, name] = /^(?:\d+|(?:\d+ )?\d+\/(\d+)) (\S+)$/.exec(term) ?? [];
          if (name && Object.hasOwn(fractions, name) && below) expect(fractions[name], text).toContain(below);
          else
            expect(term).toMatch(
              /^\d[\d,]*(\.\d+)? (m?g|[mµ]?L|mm|cm²|in|ft|in²|ft²|oz|lb|quarts?|cups?|tbsp|tsp)$/,
            );
        }
      }),
    );
  });
});

describe('steps add up to the total in each system', () => {
  it.each(['metric', 'US'] as const)('%s', (system) => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), (wanted) => {
        const line = plannedLine(lineOf({ at: planAt(gelBlock), wanted, forOthers: 0 }, bench, zero, []));
        for (const use of ['gelatin-powder', 'water', 'gel']) {
          const total = roundedTotal({ line, use, tools: bench.tools, system });
          const shares = [...sharesOf({ line, use, tools: bench.tools, system }).values()];
          const sum = shares.reduce((all, share) => all.add(convert(share, total.unit).value), zero);
          expect(sum.equals(total.value), use).toBe(true);
          expect(compare(total, needOf(line, use)!.total)).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 50 },
    );
  });
});

describe('both stand side by side', () => {
  const line = plannedLine(lineOf({ at: planAt(gelBlock), wanted: 10, forOthers: 0 }, bench, zero, []));

  // 1326.3… g = 46.78… oz; 11 936.8… mL = 50.45… cups -> 51, as 1 cup is within 2 %; sizes to the nearest sixteenth: 5.905… in x 3.937… in
  it.each([
    ['gelatin-powder', '1.327 kg (2 lb 14 7/8 oz)'],
    ['water', '11.94 L (12 3/4 US quarts)'],
    ['felt-3mm', '20 of 150 mm × 100 mm (5 7/8 in × 3 15/16 in)'],
  ])('%s: %s', (id, text) => {
    const rows = showMaterials('', line, inUnits('both'));
    expect(plain(rows.find((row) => row.id === id)!.total.text)).toBe(text);
  });

  it('what is the same in both is said once', () => {
    expect(inSystems('both', () => '12')).toBe('12');
  });
});

describe('what is cut', () => {
  it.each([
    [showRule(exact(1220), 'US'), '48 1/16 in'], //         48.031… in
    [showLength(exact(6640), 'both'), '6.64 m (21 ft 9 7/16 in)'],
    [areaNumbers(exact(600), exact(450), 'both'), '600 × 450 (23 5/8 × 17 11/16)'], // 23.622… 17.716…
    [areaNumbers(exact(600), exact(3), 'US'), '23 5/8 × 1/8'], // a head says the unit
    [
      showSize(
        {
          sides: [
            { value: '5/2', unit: 'in' },
            { value: '15', unit: 'cm' },
          ],
        },
        'US',
      ),
      '2 1/2 in × 5 7/8 in',
    ],
  ])('%s', (text, expected) => {
    expect(plain(text)).toBe(expected);
  });
});

describe('temperatures', () => {
  // NIST SP 811 (2008), App. B.8: t/°F = 1.8 t/°C + 32
  it.each([
    ['60 °C', 'both', '60 °C (140 °F)'],
    ['60 C', 'metric', '60 C'],
    ['37 °C', 'US', '99 °F'], //                 98.6
    ['-18 °C', 'US', '0 °F'], //                 -0.4
    ['60 °C ± 2 °C', 'US', '137–143 °F'], //     136.4 to 143.6: never outside
    ['350 °F', 'metric', '177 °C'], //           176.67
    ['350 °F', 'US', '350 °F'],
    ['full', 'US', 'full'],
    ['15 mm ± 3 mm', 'both', '15 mm ± 3 mm'],
  ] as const)('%s in %s: %s', (text, units, shown) => {
    expect(plain(showSetting(text, inUnits(units)))).toBe(shown);
  });
});
