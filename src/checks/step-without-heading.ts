import type { Section } from '../core/model/prose.ts';
import { nearName } from '../core/near-name.ts';
import type { Check, Finding } from './check.ts';
import type { GuideRead } from './lookup/context.ts';
import { inWords } from './lookup/names.ts';

/** A step that no heading of the prose belongs to, or more than one. */
export const stepWithoutHeading: Check = {
  code: 'step-without-heading',
  gravity: 'incomplete',
  find: ({ guides }) => guides.flatMap((read) => read.guide.steps.flatMap((_, step) => ofStep(read, step))),
};

function ofStep(read: GuideRead, index: number): readonly Finding[] {
  const { steps, prose } = read.guide;
  const { id, heading = inWords(id) } = steps[index]!;
  const own = prose.sections.filter(({ step }) => step === id);
  if (own.length === 1) return [];
  const facts = { step: heading };
  if (own.length > 1) {
    const [second, first] = [own[1]!, own[0]!].map(({ at }) => read.prose(at));
    return [{ variant: 'two', places: [second!, first!, read.place('steps', index, 'id')], facts }];
  }
  const near = nearSection(heading, prose.sections) ?? sectionInItsPlace(read.guide, index);
  if (!near) return [{ places: [read.place('steps', index, 'id')], facts }];
  const places = [read.place('steps', index, 'id'), read.prose(near.at)] as const;
  const isNear = nearName(heading, [near.heading]) !== undefined || goesOn(heading, near);
  const variant = isNear ? 'near' : 'in-its-place';
  return [{ variant, places, facts: { ...facts, near: near.heading } }];
}

/** The one heading between those of the steps before and after it: it may have been given a new name. */
function sectionInItsPlace(
  { steps, prose: { sections } }: GuideRead['guide'],
  index: number,
): Section | undefined {
  const [before, after] = [index - 1, index + 1].map((place) => {
    const step = steps[place]?.id;
    return step === undefined ? -1 : sections.findIndex((section) => section.step === step);
  });
  const between = sections[before! + 1];
  const isAlone = before! >= 0 && after === before! + 2;
  return isAlone && between?.step === undefined && between?.heading !== '' ? between : undefined;
}

/** A heading that belongs to no step and may be meant for this one. */
function nearSection(heading: string, sections: readonly Section[]): Section | undefined {
  const free = sections.filter((section) => section.heading !== '' && section.step === undefined);
  const near = nearName(
    heading,
    free.map((section) => section.heading),
  );
  const longer = free.filter((section) => goesOn(heading, section));
  return free.find((section) => section.heading === near) ?? (longer.length === 1 ? longer[0] : undefined);
}

/** "Cut" -> "Cut the foam". */
function goesOn(heading: string, section: Section): boolean {
  return section.heading.toLowerCase().startsWith(`${heading.toLowerCase()} `);
}
