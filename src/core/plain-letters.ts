/** Letters that Unicode does not take apart into a plain one and a mark, as people write them who lack them. */
const spelledOut: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  ð: 'd',
  đ: 'd',
  þ: 'th',
  ł: 'l',
  ħ: 'h',
  ı: 'i',
};
const special = new RegExp(`[${Object.keys(spelledOut).join('')}]`, 'g');

/**
 * A text as it is compared: small letters, no accents, ligatures taken apart.
 *
 *     Crépine -> crepine      Größe -> grosse      ﬁne -> fine      Œdème -> oedeme
 *
 * @source Unicode Standard Annex 15: compatibility decomposition (NFKD); the letters above are from memory.
 */
export function plainLetters(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(special, (letter) => spelledOut[letter]!);
}
