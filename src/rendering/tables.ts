import type { Element, ElementContent, Root } from 'hast';
import { h } from 'hastscript';
import { proseWords } from '../words/prose.ts';

/**
 * The tree with its tables in a frame that scrolls by itself where they are wider than the page, and with classes in
 * place of the `align` attribute.
 */
export function setTables(tree: Root): Root {
  return { ...tree, children: tree.children.map((node) => (node.type === 'element' ? setNode(node) : node)) };
}

function setNode(node: Element): Element {
  const children = node.children.map((child) => (child.type === 'element' ? setNode(child) : child));
  return framed(aligned({ ...node, children }));
}

function framed(node: Element): Element {
  if (node.tagName !== 'table') return node;
  return h(
    'div',
    { className: ['scroll'], role: 'group', tabIndex: 0, ariaLabel: proseWords.table },
    node as ElementContent,
  );
}

/** `right` and `center` as classes; the side where reading starts needs none. */
function aligned(node: Element): Element {
  const { align, ...properties } = node.properties;
  const className = { right: ['end'], center: ['middle'] }[String(align)];
  return { ...node, properties: className ? { ...properties, className } : properties };
}
