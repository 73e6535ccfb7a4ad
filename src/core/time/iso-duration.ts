import type { Exact } from '../quantity/exact.ts';
import { exact, exactText, zero } from '../quantity/exact.ts';
import type { Reading } from '../quantity/problem.ts';
import { read, refuse } from '../quantity/problem.ts';

const seconds: Readonly<Record<string, number>> = { W: 604_800, D: 86_400, H: 3_600, M: 60, S: 1 };
const part = (letter: string) => `(?:\\d{1,15}(?:[.,]\\d{1,15})?${letter})?`;
const shape = new RegExp(
  `^P(?=.)(${part('Y')}${part('M')})(${part('W')}${part('D')})(?:T(?=.)(${part('H')}${part('M')}${part('S')}))?$`,
);

/**
 * Exact seconds of `P1DT2H30M`, `PT1,5H`, `P2W`. `undefined` where the text does not set out to be one.
 *
 * Years and months are refused, having no one length. The smallest part alone may have a fraction, with a point or
 * a comma: the one place where a decimal comma is read.
 *
 * @source ISO 8601-1:2019, 5.5.2 (the representation of durations).
 */
export function isoSeconds(text: string): Reading<Exact> | undefined {
  if (!/^P[T\d]/.test(text)) return undefined;
  const found = shape.exec(text);
  if (!found) return refuse('amount-unreadable.iso', text);
  const [calendar, days, time] = [partsOf(found[1]), partsOf(found[2]), partsOf(found[3])];
  if (calendar.length > 0) return notOneLength(text, calendar);
  const all = [...days, ...time];
  const fractionTooSoon = all.slice(0, -1).some(({ value }) => value.d !== 1n);
  if (fractionTooSoon) return refuse('amount-unreadable.iso', text);
  return read(all.reduce((sum, { value, letter }) => sum.add(value.mul(seconds[letter]!)), zero));
}

interface Part {
  readonly value: Exact;
  readonly letter: string;
}

function partsOf(text = ''): Part[] {
  return [...text.matchAll(/([\d.,]+)([A-Z])/g)].map(([, number, letter]) => ({
    value: exact(number!.replace(',', '.')),
    letter: letter!,
  }));
}

function notOneLength(text: string, calendar: readonly Part[]): Reading<never> {
  const years = calendar.find(({ letter }) => letter === 'Y');
  const months = calendar.reduce(
    (sum, { value, letter }) => sum.add(value.mul(letter === 'Y' ? 12 : 1)),
    zero,
  );
  const facts = { number: exactText((years ?? calendar[0]!).value), months: exactText(months) };
  return refuse(`duration-calendar.${years ? 'years' : 'months'}`, text, facts);
}
