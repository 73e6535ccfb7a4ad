import type { Shown } from '../../src/showing/shown/shown.ts';
import type { Content, Markup } from './markup.ts';
import { isSaid, shows } from './place.ts';

/** The way to another page, or to a file, and what it is called. */
export interface Link {
  readonly name: string;
  readonly href: string;
}

/** A list of texts; nothing where none says anything. */
export function textList(texts: readonly Shown[], kind?: string): Content {
  const said = texts.filter(isSaid);
  if (said.length === 0) return null;
  return (
    <ul class={kind}>
      {said.map((text) => (
        <li {...shows(text)} />
      ))}
    </ul>
  );
}

/** A list of ways to other pages. */
export function linkList(links: readonly Link[]): Markup {
  return (
    <ul class="plain">
      {links.map(({ name, href }) => (
        <li>
          <a href={href}>{name}</a>
        </li>
      ))}
    </ul>
  );
}
