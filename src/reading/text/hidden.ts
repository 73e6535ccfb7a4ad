/** Control characters, separators that some editors take for line ends, and what turns the direction of writing. */
export const hidden =
  /[\0-\x08\x0B-\x1F\x7F-\x9F\u2028\u2029\u202A-\u202E\u2066-\u2069\uFEFF\uFFFE\uFFFF]|\p{Surrogate}/gu;
const turnsDirection = /[\u202A-\u202E\u2066-\u2069]/;

/** The first character of a text that nobody sees, as what a report says of it; `undefined` where there is none. */
export function hiddenIn(
  text: string,
):
  | { readonly code: string; readonly variant?: string; readonly facts: { readonly character: string } }
  | undefined {
  const [character] = text.match(hidden) ?? [];
  if (character === undefined) return undefined;
  const variant = turnsDirection.test(character) ? { variant: 'direction' } : {};
  return { code: 'hidden-character', ...variant, facts: { character: codePoint(character) } };
}

const codePoint = (character: string): string =>
  `U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}`;
