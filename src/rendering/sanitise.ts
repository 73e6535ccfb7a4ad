import type { Element, Nodes, Root } from 'hast';
import rehypeSanitize, { type Options } from 'rehype-sanitize';
import { unified } from 'unified';

/** What authors' prose may become; everything else goes. No style, no class but
 * those of our own making, and a prefix on every id. */
const allowed: Options = {
  tagNames: [
    ...[
      'a',
      'blockquote',
      'br',
      'code',
      'del',
      'div',
      'em',
      'figcaption',
      'figure',
      'h2',
      'h3',
      'h4',
      'h5',
      'h6',
    ],
    ...[
      'hr',
      'img',
      'li',
      'ol',
      'p',
      'pre',
      'span',
      'strong',
      'table',
      'tbody',
      'td',
      'th',
      'thead',
      'tr',
      'ul',
    ],
  ],
  attributes: {
    a: ['href', ['rel', 'noreferrer']],
    div: [['className', 'scroll'], ['role', 'group'], ['tabIndex', 0], 'ariaLabel'],
    h2: ['id'],
    h3: ['id'],
    h4: ['id'],
    img: [
      ...['src', 'srcSet', 'sizes', 'alt', 'width', 'height'],
      ['loading', 'lazy'],
      ['decoding', 'async'],
    ],
    ol: ['start'],
    span: [['className', 'amount'], 'dataShows'],
    td: [['className', 'end', 'middle']],
    th: [['className', 'end', 'middle']],
  },
  protocols: { href: ['http', 'https', 'mailto', 'tel'], src: [] },
  ancestors: {
    li: ['ol', 'ul'],
    tbody: ['table'],
    td: ['table'],
    th: ['table'],
    thead: ['table'],
    tr: ['table'],
  },
  required: {},
  clobber: ['id', 'name'],
  clobberPrefix: 'text-',
  strip: ['script', 'style', 'template', 'title'],
  allowComments: false,
  allowDoctypes: false,
};

/** The tree without anything that could run, ask another place, or pass for a part of the page itself. */
export function sanitise(tree: Root): Root {
  const clean: Root = unified().use(rehypeSanitize, allowed).runSync(tree);
  return onlyOwnPictures(clean);
}

/** Pictures whose address leaves the site: the list of schemes of the sanitiser lets `//elsewhere/a.png` through. */
function onlyOwnPictures<T extends Nodes>(node: T): T {
  if (!('children' in node)) return node;
  const children = node.children.filter((child) => !isForeignPicture(child)).map(onlyOwnPictures);
  return { ...node, children };
}

function isForeignPicture(node: Nodes): boolean {
  if (!isElement(node) || node.tagName !== 'img') return false;
  const { src, srcSet } = node.properties;
  const copies = srcSet === undefined ? [] : String(srcSet).split(',');
  return ![src, ...copies.map((copy) => copy.trim().replace(/ \d+w$/, ''))].every(isOwnPicture);
}

function isOwnPicture(address: unknown): boolean {
  return /^(\.\.\/)*[a-z0-9-]+(\/[a-z0-9-]+)*\.[a-z]+$/.test(String(address));
}

function isElement(node: Nodes): node is Element {
  return node.type === 'element';
}
