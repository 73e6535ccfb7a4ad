import type { Section } from './prose.ts';

/** The heading of level 2 below which a module's prose is for instructors alone. */
export const staffHeading = 'For instructors';

/** Whether a section of a module's prose is for instructors alone. */
export function isForStaff({ heading }: Pick<Section, 'heading'>): boolean {
  return plain(heading) === plain(staffHeading);
}

/** A heading that speaks of instructors and is not the one: its author may believe that trainees do not see it. */
export function seemsForStaff({ heading }: Pick<Section, 'heading'>): boolean {
  return !isForStaff({ heading }) && /\b(instructors?|staff|faculty|raters?)\b/i.test(heading);
}

function plain(heading: string): string {
  return heading.trim().replace(/[:.]$/, '').toLowerCase();
}
