import type { Element, ElementContent } from 'hast';
import type { Image, Paragraph } from 'mdast';
import { h } from 'hastscript';
import type { Picture } from './prose.ts';

/** The picture of a paragraph that holds nothing else. */
export function loneImage({ children }: Paragraph): Image | undefined {
  const [only, ...rest] = children.filter((child) => child.type !== 'text' || child.value.trim() !== '');
  return only?.type === 'image' && rest.length === 0 ? only : undefined;
}

/** A picture with its caption below; its size is said, so that the page does not move when it loads. */
export function figure({ address, width, height }: Picture, alt: string, caption: string): Element {
  const picture = h('img', { src: address, alt, width, height });
  return h('figure', caption === '' ? [picture] : [picture, h('figcaption', caption)]);
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
