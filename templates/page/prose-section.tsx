import type { ElementContent } from 'hast';
import type { Markup } from './markup.ts';
import { part } from './part.tsx';

/** Prose below a heading of its author. */
export interface ProseSection {
  readonly id: string;
  /** Empty for what stands before any heading. */
  readonly heading: string;
  readonly content: readonly ElementContent[];
}

/** What an author wrote, on a page. */
export function proseBlock(content: readonly ElementContent[]): Markup {
  return <div class="prose">{[...content]}</div>;
}

/** Sections that are parts of a page by themselves. */
export function proseParts(
  sections: readonly ProseSection[],
): readonly (readonly [id: string, name: string, markup: Markup])[] {
  return sections.map(({ id, heading, content }) => [id, heading, part(id, heading, proseBlock(content))]);
}
