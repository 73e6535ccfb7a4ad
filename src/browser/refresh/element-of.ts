import type { Tree } from '../../showing/figures/tree.ts';

const svgSpace = 'http://www.w3.org/2000/svg';
const htmlSpace = 'http://www.w3.org/1999/xhtml';

/** A picture as an element of the page. */
export function elementOf(page: Document, { tag, attributes, children }: Tree, space = htmlSpace): Element {
  const own = tag === 'svg' ? svgSpace : space;
  const element = page.createElementNS(own, tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(
    ...children.map((child) => (typeof child === 'string' ? child : elementOf(page, child, own))),
  );
  return element;
}
