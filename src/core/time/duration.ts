import type { Duration, Keeping } from '../model/values.ts';
import type { Exact } from '../quantity/exact.ts';
import { exact, exactText, floor, rational } from '../quantity/exact.ts';
import type { Reading } from '../quantity/problem.ts';
import { about, andThen, read, refuse } from '../quantity/problem.ts';
import type { Expression, Term } from '../quantity/scan.ts';
import { leadingTerm, termFact, wholeExpression } from '../quantity/scan.ts';
import { tidy } from '../quantity/tidy.ts';
import { isoSeconds } from './iso-duration.ts';

/**
 * A length of time: `45 min`, `2 h 30 min`, `40–60 min` (the upper end counts), `3 working days`, `PT2H30M`.
 * Months and years have no one length and are refused; so is `overnight`, which has none at all.
 */
export function readDuration(text: string): Reading<Duration> {
  const tidied = tidy(text);
  const iso = isoSeconds(tidied);
  if (iso) return iso.ok ? read({ seconds: rational(iso.value) }) : about(text, iso);
  const workingDays = /^(.+?) working days?$/i.exec(tidied);
  if (workingDays) return wholeDays(text, workingDays[1]!);
  const calendar = calendarUnit(tidied);
  if (calendar)
    return andThen(calendarNumber(text, calendar.number), (number) => notOneLength(text, number, calendar));
  if (!/\d/.test(tidied)) return refuse('duration-vague', text);
  return andThen(wholeExpression(text), (written) => span(text, written));
}

/** How long something keeps: a time, or calendar months (`24 months`). */
export function readKeeping(text: string): Reading<Keeping> {
  const calendar = calendarUnit(tidy(text));
  if (calendar?.unit !== 'months') return readDuration(text);
  return andThen(calendarNumber(text, calendar.number), (number) => {
    return number.d === 1n ? read({ months: rational(number) }) : refuse('amount-not-whole', text);
  });
}

function span(text: string, { first, second, join }: Expression): Reading<Duration> {
  if (join === 'tolerance') return refuse('range-not-here.tolerance', text);
  const upper = second ?? first;
  const wrong = [first, upper].find((term) => term.unit?.dimension !== 'time');
  if (wrong)
    return wrong.unit ? refuse('unit-wrong.time', text, { unit: wrong.unit.symbol }) : noUnit(text, wrong);
  const [least, most] = [secondsIn(first), secondsIn(upper)];
  if (least.gt(most))
    return refuse('range-reversed', text, { least: termFact(first), most: termFact(upper) });
  return read({ seconds: rational(most), ...(second ? { least: rational(least) } : {}) });
}

function secondsIn({ value, unit }: Term): Exact {
  return value.mul(exact(unit!.factor));
}

function noUnit(text: string, { number }: Term): Reading<never> {
  return refuse('unit-missing.time', text, { number });
}

function wholeDays(text: string, number: string): Reading<Duration> {
  return andThen(calendarNumber(text, number), (days) => {
    return days.d === 1n ? read({ workingDays: floor(days) }) : refuse('amount-not-whole', text);
  });
}

/** `2 years`, `24 months`: time by the calendar, of no one length. */
function calendarUnit(
  tidied: string,
): { readonly number: string; readonly unit: 'months' | 'years' } | undefined {
  const found = /^(.*?) ?(?:(months?)|years?|yrs?)$/i.exec(tidied);
  return found ? { number: found[1]!, unit: found[2] ? 'months' : 'years' } : undefined;
}

/** The bare number before `months` or `working days`. */
function calendarNumber(text: string, number: string): Reading<Exact> {
  if (!/\d/.test(number)) return refuse('duration-vague', text);
  const term = leadingTerm(number);
  if (!term.ok) return about(text, term);
  const { found, rest } = term.value;
  if (/^ ?[-–—]|^ to /.test(rest)) return refuse('range-not-here', text);
  if (rest !== '' || found.unit) return refuse('amount-unreadable', text);
  return found.value.s < 0n ? refuse('amount-negative', text) : read(found.value);
}

function notOneLength(text: string, number: Exact, { unit }: { unit: 'months' | 'years' }): Reading<never> {
  const months = unit === 'years' ? number.mul(12) : number;
  const facts = { number: exactText(number), months: exactText(months) };
  return refuse(`duration-calendar.${unit}`, text, facts);
}
