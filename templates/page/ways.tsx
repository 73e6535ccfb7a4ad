import { pageWords } from '../../src/words/pages.ts';
import type { Content, Markup } from './markup.ts';

/** A part of the page, and how the ruler at the foot of the mat names it. */
export interface PagePart {
  readonly id: string;
  readonly name: string;
  readonly markup: Content;
}

/** Those parts that have something to say. */
export function partsThere(
  parts: readonly (readonly [id: string, name: string, markup: Content])[],
): readonly PagePart[] {
  return parts.flatMap(([id, name, markup]) => (markup === null ? [] : [{ id, name, markup }]));
}

/** The ways down the page stand on the ruler at the foot of the mat. */
export function ways(parts: readonly PagePart[]): Markup {
  return (
    <nav class="ways" aria-label={pageWords.pageNav}>
      <ul>
        {parts.map(({ id, name }) => (
          <li>
            <a href={`#${id}`}>{name}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
