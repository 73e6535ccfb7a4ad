import type { Element, Root } from 'hast';
import { h } from 'hastscript';
import { proseWords } from '../words/prose.ts';

/**
 * The tree with its tables and examples in frames that scroll by themselves, by keyboard too, where they are wider
 * than the page; and with classes in place of the `align` attribute.
 */
export function framed(tree: Root): Root {
  return { ...tree, children: tree.children.map((node) => (node.type === 'element' ? setNode(node) : node)) };
}

function setNode(node: Element): Element {
  const children = node.children.map((child) => (child.type === 'element' ? setNode(child) : child));
  return inFrame(aligned({ ...node, children }));
}

const frames: Readonly<Record<string, string>> = { table: proseWords.table, pre: proseWords.example };

function inFrame(node: Element): Element {
  const name = frames[node.tagName];
  return name === undefined
    ? node
    : h('div', { className: ['scroll'], role: 'group', tabIndex: 0, ariaLabel: name }, node);
}

/** `right` and `center` as classes; the side where reading starts needs none. */
function aligned(node: Element): Element {
  const { align, ...properties } = node.properties;
  const className = { right: ['end'], center: ['middle'] }[String(align)];
  return { ...node, properties: className ? { ...properties, className } : properties };
}
