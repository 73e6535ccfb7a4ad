import type { Module } from '../core/model/module.ts';
import type { Section } from '../core/model/prose.ts';
import { countsOf, type Counts } from '../core/statistics/readability.ts';

/** A text of the module, as `read: the-two-planes` names it. */
export function textNamed({ prose }: Module, name: string): Section | undefined {
  return prose.sections.find(({ slug }) => slug !== '' && slug === name);
}

/** What is counted in some texts: each paragraph, heading and cell ends a sentence. */
export function countsIn(sections: readonly Section[]): Counts {
  const lines = sections.flatMap(({ text = '' }) => text.split('\n')).map(countsOf);
  const sum = (key: keyof Counts): number => lines.reduce((all, counts) => all + counts[key], 0);
  return { words: sum('words'), sentences: sum('sentences'), syllables: sum('syllables') };
}

/** Whether a name is that of a file: `needling.mp4`, `./text/rules.pdf`. */
export function isFileName(name: string): boolean {
  return /^\S+\.[a-z0-9]{2,5}$/i.test(name) && !/^[a-z]+:|^\/\//i.test(name);
}
