import type { Quantity } from '../model/values.ts';
import type { Reading } from './problem.ts';
import { read, refuse } from './problem.ts';
import { compare, measure } from './quantity.ts';
import { readLeading } from './read-leading.ts';
import { tidy } from './tidy.ts';
import { dimensionOf } from './units.ts';

/**
 * The hottest temperature that words speak of: 62 °C of `58–62 °C`, 60 °C of `low, about 60 °C`, nothing of `low`.
 *
 * Degrees that may be a heat or an angle are refused: `60 degrees` may burn somebody. `30 degrees from level` is words.
 */
export function readHeat(text: string): Reading<Quantity | undefined> {
  const words = tidy(text);
  const degrees = bareDegrees.exec(words);
  if (degrees)
    return refuse('unit-ambiguous.degrees', text, { number: degrees[1]!, celsius: inCelsius(words) });
  const heats = [...words.matchAll(numberStarts)].flatMap(({ index }) => temperatureOf(words.slice(index)));
  return read(heats.sort((one, other) => compare(measure(other), measure(one)))[0]);
}

/** `60 degrees`, `60°`; not `60 °C`, the first end of `58°–62 °C`, or `30° from level`. */
const bareDegrees =
  /(\d[\d.]*) ?(?:degrees?\b|deg\b\.?|[°º˚])(?! ?(?:[CF]\b|celsius|centigrade|fahrenheit)| ?[–-] ?\d| to \d| (?:above|below|from|of|off|to|up|down)\b)/iu;
const inCelsius = (words: string): string =>
  words.replace(bareDegrees, (_, number: string) => `${number} °C`);

/** Where a number begins, with its minus, but not the minus of a range. */
const numberStarts = /(?<![\p{L}\d.,])(?:(?<![\d°CF] ?)-)?\d/gu;

function temperatureOf(words: string): readonly Quantity[] {
  const amount = readLeading(words)?.amount;
  if (!amount || !('most' in amount) || dimensionOf(amount.unit) !== 'temperature') return [];
  return [{ value: amount.most, unit: amount.unit }];
}
