import type { Element, ElementContent, Nodes, Root } from 'hast';
import type { Image, Paragraph } from 'mdast';
import { h } from 'hastscript';

/** A file that the build itself copied, with its size in pixels so that nothing moves when it loads. */
export interface Picture {
  readonly address: string;
  readonly width: number;
  readonly height: number;
  /** The same at all its widths, rising, for browsers to choose from; absent where there is one. */
  readonly copies?: readonly { readonly address: string; readonly width: number }[];
}

/** The picture of a paragraph that holds nothing else. */
export function loneImage({ children }: Paragraph): Image | undefined {
  const [only, ...rest] = children.filter((child) => child.type !== 'text' || child.value.trim() !== '');
  return only?.type === 'image' && rest.length === 0 ? only : undefined;
}

/** How wide a page shows a picture: beside the acts at a desk, below them on a tablet, from edge to edge on a phone. */
const sizes = '(min-width: 66rem) 27rem, (min-width: 36rem) 34rem, 100vw';

/** A picture with its caption below. */
export function figure(picture: Picture, alt: string, caption: string): Element {
  const image = imageOf(picture, alt);
  return h('figure', caption === '' ? [image] : [image, h('figcaption', caption)]);
}

/**
 * The picture alone. Its size is said, so that the page does not move when it loads; it loads when it comes near the
 * window, at the width that the browser wants of those there are.
 */
export function imageOf({ address, width, height, copies = [] }: Picture, alt: string): Element {
  const choice =
    copies.length > 1
      ? { srcSet: copies.map((copy) => `${copy.address} ${copy.width}w`).join(', '), sizes }
      : {};
  return h('img', { src: address, ...choice, alt, width, height, loading: 'lazy', decoding: 'async' });
}

/** A page whose first picture does not wait until it comes near: it is near. */
export function firstAtOnce(page: Root): Root {
  const first = firstImage(page);
  if (first) delete first.properties.loading;
  return page;
}

function firstImage(node: Nodes): Element | undefined {
  if (node.type === 'element' && node.tagName === 'img') return node;
  if (!('children' in node)) return undefined;
  for (const child of node.children) {
    const found = firstImage(child);
    if (found) return found;
  }
  return undefined;
}

/** What is a figure, and what is not: figures stand beside the acts of a step. */
export function figuresApart(content: readonly ElementContent[]): {
  readonly figures: readonly Element[];
  readonly rest: readonly ElementContent[];
} {
  const isFigure = (node: ElementContent): node is Element =>
    node.type === 'element' && node.tagName === 'figure';
  return { figures: content.filter(isFigure), rest: content.filter((node) => !isFigure(node)) };
}
