import { isForStaff } from '../../core/model/for-staff.ts';
import type { Module } from '../../core/model/module.ts';
import type { Section } from '../../core/model/prose.ts';
import { countsOf, type Counts } from '../../core/statistics/readability.ts';

/** The texts of a module that trainees read. */
export function textsForAll({ prose }: Module): readonly Section[] {
  return prose.sections.filter((section) => !isForStaff(section));
}

/** A text of the module, as `read: the-two-planes` names it. */
export function textNamed(module: Module, name: string): Section | undefined {
  return textsForAll(module).find(({ slug }) => slug !== '' && slug === name);
}

/** What is counted in some texts: each paragraph, heading and cell ends a sentence. */
export function countsIn(sections: readonly Section[]): Counts {
  const lines = sections.flatMap(({ text = '' }) => text.split('\n')).map(countsOf);
  const sum = (key: keyof Counts): number => lines.reduce((all, counts) => all + counts[key], 0);
  return { words: sum('words'), sentences: sum('sentences'), syllables: sum('syllables') };
}
