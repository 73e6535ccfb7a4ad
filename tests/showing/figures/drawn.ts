import { toHtml } from 'hast-util-to-html';
import { drawn } from '../../../src/rendering/drawn.ts';
import type { Tree } from '../../../src/showing/figures/tree.ts';

/** A picture as a page has it. */
export function htmlOf(picture: Tree): string {
  return toHtml(drawn(picture));
}
