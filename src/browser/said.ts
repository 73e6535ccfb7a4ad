/** A sentence of the catalogue of words with its blanks filled by texts that are finished already. */
export function said(sentence: string, texts: Readonly<Record<string, string>>): string {
  return sentence.replace(/\{(\w+)\}/g, (blank, name: string) => texts[name] ?? blank);
}
