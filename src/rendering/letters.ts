import type { ElementContent } from 'hast';

/** Elements that stand below each other, so that their words must not run together. */
const blocks: ReadonlySet<string> = new Set([
  'p',
  'li',
  'ul',
  'ol',
  'div',
  'blockquote',
  'table',
  'tr',
  'td',
  'th',
]);

/** What markup says in plain letters, blocks apart by a space. */
export function lettersOf(node: ElementContent): string {
  if (node.type === 'text') return node.value;
  if (node.type !== 'element') return '';
  const letters = node.children.map(lettersOf).join('');
  return blocks.has(node.tagName) || /^h\d$/.test(node.tagName) ? ` ${letters} ` : letters;
}
