/** What came of reading a text: its value, or what is wrong with it. Never thrown. */
export type Reading<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };

/**
 * What is wrong with a written amount, time or sum of money. Whoever reads the file adds the place and makes a
 * `Diagnostic` of it; `words` has the sentence. Every problem carries the fact `text`: what the author wrote, without the
 * space around it.
 *
 * | code | variants | facts beside `text` | example |
 * | --- | --- | --- | --- |
 * | amount-negative | | | `-5 g` |
 * | amount-not-whole | | | `2.5` models |
 * | amount-unreadable | (none) | | `some`, `5..3 g` |
 * | | exponent, underscore, leading-zero, leading-point, grouped, too-long | number | `1e3 g`, `1_000 g`, `007 g`, `.5 g`, `1 000 g` |
 * | | mixed-hyphen | meant | `1-1/2 in`: `1 1/2 in` was meant |
 * | | extra | amount, extra | `5 g of felt`: `5 g` and `of felt` |
 * | | size, holding, density, iso | | more than three sides; a count of sides without units; no mass per volume; `PT1D` |
 * | | about, container | amount | `about 5 g`, `box of 100` |
 * | | in-words | number | `two` builders |
 * | | paper | size | `A2` of a sheet |
 * | | two-numbers | | `1:4` as a ratio |
 * | | uses | number | `about 10 uses` |
 * | amount-zero | | | a size, pack, density, ratio or yield of nothing |
 * | clock-time-as-amount | | clock | `12:30` |
 * | currency-missing | (none), symbol, euro | number; symbol | `6.40`, `£6.40`, `€6.40` |
 * | | comma | point, thousands | `6,40` |
 * | currency-unknown | (none), near | currency; nearest | `6.40 pounds`, `6.40 gbp` |
 * | currency-mixed | | first, second | `6 GBP – 7 USD` |
 * | decimal-comma | (none) | point, thousands | `1,5 g`: 1.5 or 15 |
 * | duration-calendar | years, months | number, months (of years) | `2 years`, `P1M`: not of one length |
 * | duration-vague | | | `overnight` |
 * | money-unreadable | | | `1/2 GBP` |
 * | range-mixed | | first, second | `5 g to 10 mL` |
 * | range-not-here | (none), tolerance | | `8–14 g` where one amount belongs |
 * | range-reversed | | least, most | `14–8 g` |
 * | share-above-one | | | `11 of 10` |
 * | share-without-percent | | percent | `spares: 10`: `10 %` |
 * | unit-ambiguous | (none) | unit, choices | `10 gr`: `10 g / 10 grain` |
 * | | degrees | number, celsius | `60 degrees`: a heat, or an angle |
 * | unit-missing | time, length | number (of a time) | `45` as a time, `150 x 100` |
 * | unit-system-missing | | unit, choices | `1 cup`: `1 US cup / 1 metric cup` |
 * | unit-unknown | (none), near | unit, number; nearest | `3 sheets`, `3 galons` |
 * | unit-wrong | time, length | unit | `5 g` as a time |
 * | | per-hour | | `18 GBP` as a wage |
 * | usual-outside-range | (none), unit | usual, least, most | `usual: 20 g` of `8–14 g` |
 */
export interface Problem {
  readonly code: ProblemCode;
  readonly variant?: string;
  readonly facts: Readonly<Record<string, string>>;
}

export const problemCodes = [
  'amount-negative',
  'amount-not-whole',
  'amount-unreadable',
  'amount-zero',
  'clock-time-as-amount',
  'currency-missing',
  'currency-mixed',
  'currency-unknown',
  'decimal-comma',
  'duration-calendar',
  'duration-vague',
  'money-unreadable',
  'range-mixed',
  'range-not-here',
  'range-reversed',
  'share-above-one',
  'share-without-percent',
  'unit-ambiguous',
  'unit-missing',
  'unit-system-missing',
  'unit-unknown',
  'unit-wrong',
  'usual-outside-range',
] as const;
export type ProblemCode = (typeof problemCodes)[number];

export function read<T>(value: T): Reading<T> {
  return { ok: true, value };
}

/** A refusal: `refuse('unit-unknown.near', text, { unit, nearest })`. */
export function refuse(
  code: ProblemCode | `${ProblemCode}.${string}`,
  text: string,
  facts: Problem['facts'] = {},
) {
  const [name, variant] = code.split('.') as [ProblemCode, string | undefined];
  const problem: Problem = {
    code: name,
    ...(variant ? { variant } : {}),
    facts: { text: text.trim(), ...facts },
  };
  return { ok: false, problem } as const;
}

/** The same refusal, said of the whole text that it stands in. */
export function about(text: string, refusal: { readonly ok: false; readonly problem: Problem }) {
  const { problem } = refusal;
  return { ok: false, problem: { ...problem, facts: { ...problem.facts, text: text.trim() } } } as const;
}

/** The reading carried on: `then` sees the value, a problem passes through. */
export function andThen<T, U>(reading: Reading<T>, then: (value: T) => Reading<U>): Reading<U> {
  return reading.ok ? then(reading.value) : reading;
}
