import type { Holding } from '../model/material.ts';
import type { Quantity, Size } from '../model/values.ts';
import { floor, rational } from './exact.ts';
import type { Reading } from './problem.ts';
import { about, andThen, read, refuse } from './problem.ts';
import { readQuantity } from './read-amount.ts';
import type { Term } from './scan.ts';
import { leadingTerm } from './scan.ts';
import { unknownUnit } from './spelled-unit.ts';
import { tidy } from './tidy.ts';
import { dimensionOf } from './units.ts';

/**
 * One length, two sides or three: `450 mm`, `150 mm x 100 mm`, `220 × 110 × 60 mm`. Where the last side alone has a unit,
 * it is that of all.
 */
export function readSize(text: string): Reading<Size> {
  return andThen(termsOf(text), (terms) => sizeOf(text, terms));
}

/** What a pack holds: `500 g`, `50`, `450 mm x 300 mm`, `5 x 450 mm x 300 mm`, `12 x 50 mL`. */
export function readHolding(text: string): Reading<Holding> {
  const amount = inContainer.exec(tidy(text))?.[1];
  if (amount !== undefined) return refuse('amount-unreadable.container', text, { amount });
  return andThen(termsOf(text), ([first, ...rest]) => {
    if (rest.length === 0) return andThen(readQuantity(text), (each) => one(text, each));
    if (first!.unit) return andThen(sizeOf(text, [first!, ...rest]), (each) => read({ count: 1, each }));
    if (first!.value.d !== 1n) return refuse('amount-not-whole', text);
    if (first!.value.n === 0n) return refuse('amount-zero', text);
    return andThen(eachOf(text, rest), (each) => read({ count: floor(first!.value), each }));
  });
}

/** `box of 100`, `a bag of 500 g`. */
const inContainer = /^(?:an? |1 )?(?:bag|bottle|box|can|jar|pack|packet|roll|set|tin|tub|tube) of (\d.*)$/i;

/**
 * What a pack of sheets holds. No sheet is a length, so `420 x 594 mm` is one of that size; `A2` is told its sides.
 *
 * @source ISO 216:2007, table 1 (trimmed sizes of the A series), in mm; from memory.
 */
export function readSheets(text: string): Reading<Holding> {
  const size = seriesA[text.trim().toUpperCase()];
  if (size !== undefined) return refuse('amount-unreadable.paper', text, { size });
  const holding = readHolding(text);
  const isLengths =
    holding.ok && holding.value.count > 1 && 'unit' in holding.value.each && isLength(holding.value.each);
  return isLengths ? andThen(readSize(text), (each) => read({ count: 1, each })) : holding;
}

const isLength = ({ unit }: Quantity): boolean => dimensionOf(unit) === 'length';

const seriesA: Readonly<Record<string, string>> = {
  A0: '841 mm x 1189 mm',
  A1: '594 mm x 841 mm',
  A2: '420 mm x 594 mm',
  A3: '297 mm x 420 mm',
  A4: '210 mm x 297 mm',
  A5: '148 mm x 210 mm',
};

function one(text: string, each: Quantity): Reading<Holding> {
  return each.value === '0' ? refuse('amount-zero', text) : read({ count: 1, each });
}

/** After a count every side says its unit: `450 x 300 mm` would be 450 lengths. */
function eachOf(text: string, terms: readonly Term[]): Reading<Quantity | Size> {
  const [only] = terms;
  if (terms.length > 1) {
    return terms.every(({ unit }) => unit) ? sizeOf(text, terms) : refuse('amount-unreadable.holding', text);
  }
  if (only!.value.n === 0n) return refuse('amount-zero', text);
  return read({ value: rational(only!.value), unit: only!.unit?.symbol ?? '' });
}

/** The terms between `x` or `×`, each with what it says. */
function termsOf(text: string): Reading<readonly Term[]> {
  const terms: Term[] = [];
  for (const part of tidy(text).split(/ ?[xX×] ?(?=[-\d.])/)) {
    const scanned = leadingTerm(part);
    if (!scanned.ok) return about(text, scanned);
    const { found, rest } = scanned.value;
    if (rest !== '') return strange(text, found, rest.trim());
    if (found.value.s < 0n) return refuse('amount-negative', text);
    terms.push(found);
  }
  return read(terms);
}

function strange(text: string, { unit, number, written }: Term, rest: string): Reading<never> {
  if (/^(?:[-–—]|to )/.test(rest)) return refuse('range-not-here', text);
  if (!/^\p{L}[^\d]*$/u.test(rest)) return refuse('amount-unreadable', text);
  if (!unit) return unknownUnit(text, number, rest);
  return refuse('amount-unreadable.extra', text, { amount: written, extra: rest });
}

function sizeOf(text: string, terms: readonly Term[]): Reading<Size> {
  if (terms.length > 3) return refuse('amount-unreadable.size', text);
  const sides: Quantity[] = [];
  const shared = terms.slice(0, -1).every(({ unit }) => !unit) ? terms.at(-1)!.unit : undefined;
  for (const term of terms) {
    const unit = term.unit ?? shared;
    if (!unit) return refuse('unit-missing.length', text);
    if (unit.dimension !== 'length') return refuse('unit-wrong.length', text, { unit: unit.symbol });
    if (term.value.n === 0n) return refuse('amount-zero', text);
    sides.push({ value: rational(term.value), unit: unit.symbol });
  }
  return read({ sides });
}
