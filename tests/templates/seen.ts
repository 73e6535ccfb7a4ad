import type { Nodes } from 'hast';
import { toHtml } from 'hast-util-to-html';

/** A page as a reader sees it: without blank rows and without what is hidden. */
export function seen(page: Nodes): string {
  return toHtml(shownOf(page));
}

function shownOf<T extends Nodes>(node: T): T {
  if (!('children' in node)) return node;
  const children = (node.children as readonly Nodes[]).filter((child) => !isHidden(child)).map(shownOf);
  return { ...node, children } as T;
}

function isHidden(node: Nodes): boolean {
  return node.type === 'element' && (node.tagName === 'template' || node.properties['hidden'] === true);
}
