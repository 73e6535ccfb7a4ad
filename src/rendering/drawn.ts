import type { Element } from 'hast';
import { s } from 'hastscript';

/** A picture as plain data: elements, their attributes as they are written, and texts. */
interface Drawing {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (Drawing | string)[];
}

/** A picture as an element of a page. */
export function drawn({ tag, attributes, children }: Drawing): Element {
  return s(
    tag,
    attributes,
    children.map((child) => (typeof child === 'string' ? child : drawn(child))),
  );
}
