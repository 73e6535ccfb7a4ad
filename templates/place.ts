import type { Shown } from '../src/showing/shown.ts';

/**
 * A finished text as the properties of the element that holds it, with its key: `<dd {...shows(fact.value)} />`. The
 * browser finds the element by its key and replaces the text.
 */
export function shows({ key, text }: Shown): { readonly dataShows: string; readonly children: string } {
  return { dataShows: key, children: text };
}

/** Whether there is anything to show. */
export function isSaid({ text }: Shown): boolean {
  return text !== '';
}

/** A sentence of the catalogue with its blanks filled by texts that are finished already. */
export function said(sentence: string, texts: Readonly<Record<string, string>>): string {
  return sentence.replace(/\{(\w+)\}/g, (blank, name: string) => texts[name] ?? blank);
}
