import spdxLicenseIds from 'spdx-license-ids/index.json' with { type: 'json' };
import { nearName } from '../../core/near-name.ts';
import { asId } from '../../core/slug.ts';
import type { IsoDate } from '../../core/model/values.ts';
import { isDay } from '../../core/time/day.ts';
import type { Fault } from '../report.ts';
import type { Meaning, TextReader } from '../sheet/written.ts';

export const means = <V>(value: V): Meaning<V> => ({ ok: true, value });
export const wrong = (code: string, facts: Fault['facts'] = {}, variant?: string): Meaning<never> => ({
  ok: false,
  problem: { code, facts, ...(variant ? { variant } : {}) },
});

/** The text itself, without the blanks round it. */
export const readWords: TextReader<string> = (text) => means(text.trim());

/** One of a few words; each key of the table is a word, its value what it means. */
export function oneOf<V>(
  words: Readonly<Record<string, V>>,
  said: readonly string[] = Object.keys(words),
): TextReader<V> {
  return (text) => {
    const word = Object.keys(words).find((known) => known.toLowerCase() === text.trim().toLowerCase());
    if (word !== undefined) return means(words[word]!);
    const near = nearName(text, said);
    return wrong(
      'unknown-word',
      { choices: list(said), ...(near ? { near } : {}) },
      near ? 'near' : undefined,
    );
  };
}

/** "a, b or c". */
function list(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}

/** One of a list of words, each standing for itself. */
export function oneOfThese<W extends string>(words: readonly W[]): TextReader<W> {
  return oneOf(Object.fromEntries(words.map((word) => [word, word])) as Record<W, W>, words);
}

export const readYesNo = oneOf({ yes: true, no: false, true: true, false: false }, ['yes', 'no']);

/** Lower-case letters, digits and hyphens between them; no name that every object of the language has. */
export const readId: TextReader<string> = (text) => {
  if (isId(text)) return means(text);
  if (text in Object.prototype) return wrong('id-reserved', {}, 'language');
  return wrong('id-unusable', { better: asId(text) });
};

/** An id that none of some words is, because they mean something else where it stands. */
export function idBut(reserved: (id: string) => boolean, variant: string): TextReader<string> {
  return (text) => (reserved(text) ? wrong('id-reserved', {}, variant) : readId(text));
}

export function isId(text: string): boolean {
  return /^[a-z0-9]+(-[a-z0-9]+)*$/.test(text) && !(text in Object.prototype);
}

/** A calendar day that exists, `2026-03-09`. */
export const readDay: TextReader<IsoDate> = (text) => {
  const day = text.trim();
  if (isDay(day)) return means(day);
  return wrong('date-unreadable', {}, /^\d{4}-\d{2}-\d{2}$/.test(day) ? 'no-such-day' : undefined);
};

/** An address on the web. */
export const readLink: TextReader<string> = (text) =>
  /^https?:\/\/[^\s/]+(\/\S*)?$/i.test(text.trim()) ? means(text.trim()) : wrong('link-unreadable');

/** A hazard statement code of GHS: `H222`, `H360FD`, `H300+H310`. */
export const readHazard: TextReader<string> = (text) =>
  /^E?U?H\d{3}[A-Za-z]{0,2}( ?\+ ?H\d{3}[A-Za-z]{0,2})*$/.test(text.trim())
    ? means(text.trim().replaceAll(' ', ''))
    : wrong('hazard-code-unreadable');

/** A precautionary statement code of GHS: `P210`, `P410+P412`. P1 to P5: UN GHS Rev. 10, Annex 3. */
export const readPrecaution: TextReader<string> = (text) =>
  /^P[1-5]\d{2}( ?\+ ?P[1-5]\d{2})*$/.test(text.trim())
    ? means(text.trim().replaceAll(' ', ''))
    : wrong('hazard-code-unreadable', {}, 'precaution');

/** A licence of the SPDX list, in its own spelling. */
export const readLicence: TextReader<string> = (text) => {
  const known = licences.get(text.trim().toLowerCase());
  if (known) return means(known);
  const near = nearName(text.trim(), spdxLicenseIds);
  return wrong('licence-unknown', near ? { near } : {}, near ? 'near' : undefined);
};
const licences = new Map(spdxLicenseIds.map((id) => [id.toLowerCase(), id]));
