/** A page as the search knows it. */
export interface SearchDocument {
  /** The way to it from the edition's folder. */
  readonly href: string;
  readonly kind: 'guide' | 'material' | 'tool' | 'page';
  readonly title: string;
  /** One line that says what it is. */
  readonly says: string;
  /** Every other word of it, each once, in alphabetical order. */
  readonly words: string;
}

/** Words that the search treats alike: `{ ultrasound: ['sonography'] }`. */
export type SayAlso = Readonly<Record<string, readonly string[]>>;

/** A document with its text reduced to words, and with what people also say for them. */
export function searchDocument(
  page: Omit<SearchDocument, 'words'> & { readonly text: string },
  sayAlso: SayAlso,
): SearchDocument {
  const { href, kind, title, says, text } = page;
  const all = [title, says, text].join(' ').toLowerCase();
  const words = wordsOf([text, ...alsoSaid(all, sayAlso)].join(' '));
  return { href, kind, title, says, words: words.join(' ') };
}

/** All members of each group of which one stands in the text. */
function alsoSaid(text: string, sayAlso: SayAlso): readonly string[] {
  const groups = Object.entries(sayAlso).map(([word, others]) => [word, ...others]);
  return groups.filter((group) => group.some((word) => text.includes(word.toLowerCase()))).flat();
}

function wordsOf(text: string): readonly string[] {
  const words = text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
  return [...new Set(words)].filter((word) => word.length > 1).sort();
}

/**
 * The documents as a script that sets one global: a page that was opened from a disk may load a script, but no data.
 * `<` and the two line ends that end a line of a script are escaped, so that no text can close anything.
 */
export function searchScript(documents: readonly SearchDocument[]): string {
  const rows = documents.map(({ href, kind, title, says, words }) => [href, kind, title, says, words]);
  const json = JSON.stringify(rows).replace(
    /[<\u2028\u2029]/g,
    (mark) => `\\u${mark.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  return `globalThis.searchDocuments = ${json};\n`;
}
