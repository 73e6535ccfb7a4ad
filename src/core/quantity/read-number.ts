import type { Rational } from '../model/values.ts';
import type { Exact } from './exact.ts';
import { exact, exactText, floor, rational } from './exact.ts';
import { wholeNumber } from './number.ts';
import type { Reading } from './problem.ts';
import { about, andThen, read, refuse } from './problem.ts';
import { leadingTerm } from './scan.ts';
import { leadingUnit } from './spelled-unit.ts';
import { tidy } from './tidy.ts';

/** A whole number, zero or more: `12`. */
export function readCount(text: string): Reading<number> {
  const number = smallNumbers.indexOf(tidy(text).toLowerCase());
  if (number >= 0) return refuse('amount-unreadable.in-words', text, { number: String(number) });
  return andThen(bareNumber(text), (value) => whole(text, value));
}

/** A count that is written in words is at its own place. */
const smallNumbers: readonly string[] = [
  'none',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

/** A share: `10 %`, `1/10`, `0.1`. A bare number above one is a percentage that lacks its sign. */
export function readShare(text: string): Reading<Rational> {
  const tidied = tidy(text);
  const percent = /^(.*\d) ?(?:%|percent|per cent)$/.exec(tidied);
  if (percent) return andThen(bareNumber(percent[1]!, text), (value) => read(rational(value.div(100))));
  return andThen(bareNumber(text), (value) => {
    if (value.lte(1)) return read(rational(value));
    return refuse('share-without-percent', text, { percent: `${exactText(value)} %` });
  });
}

/** So much of one for one of the other, above zero: `1/4`, `0.25`, `25 %`, `2`. */
export function readRatio(text: string): Reading<Rational> {
  if (/^[\d.]+ ?(?::|to) ?[\d.]+$/.test(tidy(text)))
    return refuse('amount-unreadable.two-numbers', text.trim());
  const ratio = /%|per ?cent/.test(text)
    ? readShare(text)
    : andThen(bareNumber(text), (x) => read(rational(x)));
  return andThen(ratio, (value) => aboveZero(text, exact(value)));
}

/** The good ones of those made, above 0 up to 1: `9 of 10`, `9/10`, `90 %`. */
export function readYield(text: string): Reading<Rational> {
  const ofSome = /^(\S+) (?:of|in|out of) (\S+)$/.exec(tidy(text));
  const share = ofSome ? quotient(text, ofSome[1]!, ofSome[2]!) : readShare(text);
  if (!share.ok && share.problem.code === 'share-without-percent') return refuse('share-above-one', text);
  return andThen(share, (value) => {
    return exact(value).gt(1) ? refuse('share-above-one', text) : aboveZero(text, exact(value));
  });
}

function quotient(text: string, above: string, below: string): Reading<Rational> {
  return andThen(bareNumber(above, text), (good) =>
    andThen(bareNumber(below, text), (made) =>
      made.n === 0n ? refuse('amount-zero', text) : read(rational(good.div(made))),
    ),
  );
}

/** How often something serves: `300 uses`, `1 use`, `300`. */
export function readUses(text: string): Reading<Rational> {
  const number = tidy(text).replace(/ ?uses?$/, '');
  const uses = andThen(bareNumber(number, text), (value) => aboveZero(text, value));
  const [only, ...others] = text.match(/\d+/g) ?? [];
  const isInWords = !uses.ok && uses.problem.code === 'amount-unreadable' && !uses.problem.variant;
  return isInWords && only !== undefined && others.length === 0
    ? refuse('amount-unreadable.uses', text.trim(), { number: only })
    : uses;
}

/** A whole number of models, at least one: `12 models`, `1 model`, `12`. */
export function readModels(text: string): Reading<number> {
  const number = tidy(text).replace(/ ?models?$/, '');
  return andThen(bareNumber(number, text), (value) => {
    return value.n === 0n ? refuse('amount-zero', text) : whole(text, value);
  });
}

/** Mass per volume as g/mL: `0.6 g/mL`, `600 kg/m3`, `120 g per US cup`. */
export function readDensity(text: string): Reading<Rational> {
  const tidied = tidy(text);
  const mass = leadingTerm(tidied);
  if (!mass.ok) return about(text, mass);
  const { found, rest } = mass.value;
  const volume = leadingUnit(rest.replace(/^ ?(?:\/|per) ?/, ''));
  const isDensity =
    found.unit?.dimension === 'mass' && volume?.unit.dimension === 'volume' && volume.rest === '';
  if (!isDensity) return refuse('amount-unreadable.density', text);
  const grams = found.value.mul(exact(found.unit!.factor));
  return aboveZero(text, grams.div(exact(volume!.unit.factor)));
}

/** A number without a unit, zero or more; `text` is what the author wrote around it. */
function bareNumber(number: string, text = number): Reading<Exact> {
  const found = wholeNumber(tidy(number));
  if (!found.ok) return about(text, found);
  return found.value.value.s < 0n ? refuse('amount-negative', text) : read(found.value.value);
}

function whole(text: string, value: Exact): Reading<number> {
  return value.d === 1n ? read(floor(value)) : refuse('amount-not-whole', text);
}

function aboveZero(text: string, value: Exact): Reading<Rational> {
  if (value.s < 0n) return refuse('amount-negative', text);
  return value.n === 0n ? refuse('amount-zero', text) : read(rational(value));
}
