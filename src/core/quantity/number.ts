import type { Exact } from './exact.ts';
import { exact } from './exact.ts';
import type { Problem, Reading } from './problem.ts';
import { read, refuse } from './problem.ts';

/** A number at the beginning of a text, as it was written, and what follows it. */
export interface LeadingNumber {
  readonly value: Exact;
  readonly written: string;
  readonly rest: string;
}

/**
 * The number that a tidy text begins with: `12`, `0.5`, `1/2`, `1 1/2`, each with `-` or without. The grammar is
 * strict, so that no number is read as another than the author meant: no exponent, no underscore, no leading zero,
 * no comma, no space between thousands.
 */
export function leadingNumber(text: string): Reading<LeadingNumber> {
  for (const { looks, says } of misspellings) {
    const found = looks.exec(text);
    if (found) return says(text, found);
  }
  const found = /^(-?)(?:(\d+) )?(\d+)\/([1-9]\d*)(?!\d)|^(-?)(\d+(?:\.\d+)?)/.exec(text);
  if (!found) return refuse('amount-unreadable', text);
  const [written, fractionSign, whole, above, below, decimalSign, decimal] = found;
  const size = decimal === undefined ? exact(`${above}/${below}`).add(exact(whole ?? '0')) : exact(decimal);
  const value = fractionSign || decimalSign ? size.neg() : size;
  return read({ value, written, rest: text.slice(written.length) });
}

/** The whole text as one number and nothing else. */
export function wholeNumber(text: string): Reading<LeadingNumber> {
  const number = leadingNumber(text);
  if (!number.ok || number.value.rest === '') return number;
  return refuse('amount-unreadable.extra', text, {
    amount: number.value.written,
    extra: number.value.rest.trim(),
  });
}

type Refusal = { readonly ok: false; readonly problem: Problem };

/** Numbers that look like one and are none, or might be two. */
const misspellings: readonly {
  readonly looks: RegExp;
  readonly says: (text: string, found: RegExpExecArray) => Refusal;
}[] = [
  { looks: /^\d{1,2}:\d{2}(?!\d)/, says: (text, [clock]) => refuse('clock-time-as-amount', text, { clock }) },
  { looks: /^-?\d{41,}|^-?\d*\.\d{41,}/, says: unreadable('too-long') },
  { looks: /^-?[\d.]*\d_[\d_.]*/, says: unreadable('underscore') },
  { looks: /^-?\d+(?:\.\d+)?[eE][+-]?\d+/, says: unreadable('exponent') },
  { looks: /^-?0\d[\d.]*/, says: unreadable('leading-zero') },
  { looks: /^-?\.\d+/, says: unreadable('leading-point') },
  { looks: /^-?\d{1,3}(?: \d{3})+(?![\d/])/, says: unreadable('grouped') },
  { looks: /^-?\d[\d.]*,(?:[\d.,]*\d)/, says: decimalComma },
  {
    looks: /^([1-9]\d*)-(\d+)\/(\d+)(?!\d)/,
    says: (text, [, whole, above, below]) =>
      refuse('amount-unreadable.mixed-hyphen', text, {
        meant: text.replace(/-/, ' '),
        number: `${whole} ${above}/${below}`,
      }),
  },
];

function unreadable(variant: string) {
  return (text: string, [number]: RegExpExecArray) =>
    refuse(`amount-unreadable.${variant}`, text, { number });
}

/** `1,5 g` may be 1.5 g or 15 g: both are named, neither is guessed. */
function decimalComma(text: string, [number]: RegExpExecArray): Refusal {
  const after = text.slice(number.length);
  const [whole, decimals] = [/^(.*)[.,]/.exec(number)![1]!, /[^.,]*$/.exec(number)![0]];
  const point = `${whole.replace(/[.,]/g, '')}.${decimals}`;
  const thousands = number.replace(/,/g, '').replace(/^(-?)0+(?=\d)/, '$1');
  return refuse('decimal-comma', text, { point: point + after, thousands: thousands + after });
}
