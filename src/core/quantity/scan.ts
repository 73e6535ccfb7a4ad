import type { Exact } from './exact.ts';
import { exact } from './exact.ts';
import { leadingNumber } from './number.ts';
import type { Reading } from './problem.ts';
import { printMeasure } from './print.ts';
import { about, read, refuse } from './problem.ts';
import { leadingUnit, unknownUnit } from './spelled-unit.ts';
import { tidy } from './tidy.ts';
import type { Unit } from './units.ts';
import { unitOf } from './units.ts';

/** A number with its unit, or bare. */
export interface Term {
  readonly value: Exact;
  readonly unit: Unit | undefined;
  /** The number as the author wrote it: `1 1/2`. */
  readonly number: string;
  /** Number and unit, properly printed: `1 1/2 in`, `2 h 30 min`. */
  readonly written: string;
  /** `2 h 30 min`: the value is in the smallest unit. */
  readonly inParts?: true;
}

/** `350 g`, `40–60 s`, `12 mm ± 1 mm`: one term, or two with what joins them. */
export interface Expression {
  readonly first: Term;
  readonly second?: Term;
  readonly join?: 'range' | 'tolerance';
}

export interface Scanned<T> {
  readonly found: T;
  /** What follows, as tidied. */
  readonly rest: string;
}

/** The expression that is the whole of a text; why not, where something else follows. */
export function wholeExpression(text: string): Reading<Expression> {
  const exactly = roughly.exec(tidy(text))?.[1];
  if (exactly !== undefined) return notRoughly(text, exactly);
  const scanned = leadingExpression(tidy(text));
  if (!scanned.ok) return about(text, scanned);
  const { found, rest } = scanned.value;
  return rest === '' ? read(found) : leftOver(text, found, rest);
}

const roughly = /^(?:about|approximately|approx\.?|around|roughly|circa|ca\.?|some|~|≈) ?(\d.*)$/i;

/** “about 2 cups”: what is wrong with the rest is told first, since that is more than a word to leave out. */
function notRoughly(text: string, exactly: string): Reading<never> {
  const rest = wholeExpression(exactly);
  return rest.ok ? refuse('amount-unreadable.about', text, { amount: exactly }) : about(text, rest);
}

/** The expression that a tidy text begins with: its two ends share a unit where only one has it. */
export function leadingExpression(text: string): Reading<Scanned<Expression>> {
  const first = leadingTerm(text);
  if (!first.ok) return first;
  const joined = joinedBy(first.value.rest);
  const second = joined && leadingTerm(joined.rest);
  if (!second) return notNegative(text, { found: { first: first.value.found }, rest: first.value.rest });
  if (!second.ok) return about(text, second);
  const [one, other] = [first.value.found, second.value.found];
  const found = { first: inUnitOf(other, one), second: inUnitOf(one, other), join: joined.join };
  return notNegative(text, { found, rest: second.value.rest });
}

const joins = [
  { join: 'tolerance', looks: /^ ?(?:±|\+ ?\/ ?-|\+-) ?/ },
  { join: 'range', looks: /^ ?(?:–|—|-) ?(?=-?[\d.])|^ to (?=-?[\d.])/ },
] as const;

function joinedBy(rest: string) {
  for (const { join, looks } of joins) {
    const found = looks.exec(rest);
    if (found) return { join, rest: rest.slice(found[0].length) };
  }
  return undefined;
}

/** `term` with the unit of `other` where it has none: the 40 of `40–60 s`, but not the 1 of `1–2 h 30 min`. */
function inUnitOf(other: Term, term: Term): Term {
  if (term.unit || !other.unit || other.inParts) return term;
  return { ...term, unit: other.unit, written: `${term.number} ${other.unit.symbol}` };
}

/** Only temperatures go below zero. */
function notNegative(text: string, scanned: Scanned<Expression>): Reading<Scanned<Expression>> {
  const { first, second } = scanned.found;
  const wrong = [first, second].some(
    (term) => term && term.value.s < 0n && term.unit?.dimension !== 'temperature',
  );
  return wrong ? refuse('amount-negative', text) : read(scanned);
}

/** The term that a tidy text begins with; `2 h 30 min` and `5 ft 6 in` are one. */
export function leadingTerm(text: string): Reading<Scanned<Term>> {
  const scanned = simpleTerm(text);
  if (!scanned.ok) return scanned;
  let { found, rest } = scanned.value;
  for (;;) {
    const next = smallerPart(found, rest);
    if (!next) return read({ found, rest });
    found = joinParts(found, next.found);
    rest = next.rest;
  }
}

function simpleTerm(text: string): Reading<Scanned<Term>> {
  const number = leadingNumber(text);
  if (!number.ok) return number;
  const { value, written, rest } = number.value;
  const unit = leadingUnit(rest.trimStart());
  if (!unit) return read({ found: { value, unit: undefined, number: written, written }, rest });
  const term = { value, unit: unit.unit, number: written, written: `${written} ${unit.unit.symbol}` };
  return read({ found: term, rest: unit.rest });
}

const mayHaveParts = ['time', 'length', 'mass'];

/** ` 30 min` after `2 h`: the next term, where it is a smaller unit of the same kind. */
function smallerPart(before: Term, rest: string): Scanned<Term> | undefined {
  const gap = /^ ?(?:and )?(?=\d)/.exec(rest);
  if (!before.unit || !gap || !mayHaveParts.includes(before.unit.dimension)) return undefined;
  const next = simpleTerm(rest.slice(gap[0].length));
  if (!next.ok || next.value.found.unit?.dimension !== before.unit.dimension) return undefined;
  return exact(next.value.found.unit.factor).lt(exact(before.unit.factor)) ? next.value : undefined;
}

function joinParts(large: Term, small: Term): Term {
  const scale = exact(large.unit!.factor).div(exact(small.unit!.factor));
  const written = `${large.written} ${small.written}`;
  const value = large.value.mul(scale).add(small.value);
  return { value, unit: small.unit, number: large.number, written, inParts: true };
}

/** Something follows the amount: an unknown unit, or words that do not belong. */
function leftOver(text: string, { first, second }: Expression, rest: string): Reading<never> {
  const last = second ?? first;
  const name = rest.trim().split(/(?: |^)(?:to|[-–—±x×])(?: |$)/)[0]!;
  if (!/^\p{L}[^\d]*$/u.test(name)) return refuse('amount-unreadable', text);
  if (!last.unit) return unknownUnit(text, last.number, name);
  return refuse('amount-unreadable.extra', text, { amount: last.written, extra: rest.trim() });
}

/** The unit of a term; a bare number is a count. */
export function unitOfTerm(term: Term): Unit {
  return term.unit ?? unitOf('');
}

export function termFact(term: Term): string {
  return printMeasure({ value: term.value, unit: unitOfTerm(term).symbol });
}
