import type { Nodes } from 'mdast';

/** Nodes whose children stand below or beside each other, not within one line. */
const holdsBlocks: ReadonlySet<string> = new Set([
  'root',
  'blockquote',
  'list',
  'listItem',
  'table',
  'tableRow',
  'footnoteDefinition',
]);

/** What stretches of a document say in plain letters, paragraphs and list items apart by a space. */
export function plainWords(nodes: readonly Nodes[]): string {
  return nodes
    .map(lettersOf)
    .filter((text) => text !== '')
    .join(' ');
}

function lettersOf(node: Nodes): string {
  if ('value' in node) return node.type === 'html' ? '' : node.value;
  if (node.type === 'break') return ' ';
  if (!('children' in node)) return '';
  return holdsBlocks.has(node.type) ? plainWords(node.children) : node.children.map(lettersOf).join('');
}
