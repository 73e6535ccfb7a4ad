import type { Element, ElementContent } from 'hast';
import type { Definition, Root } from 'mdast';
import { withAllBelow } from '../../reading/prose/document.ts';
import { parseMarkdown } from '../../reading/prose/markdown.ts';
import { htmlBytes } from '../../rendering/html.ts';
import { plainText, renderProse } from '../../rendering/prose.ts';
import { freeSlugs } from '../../core/slug.ts';
import { pageWords } from '../../words/pages.ts';
import type { Site } from '../../../templates/page/site.ts';
import { textPage } from '../../../templates/library/text-page.tsx';
import type { Files } from '../paths/files.ts';

/** A page of the manual, parsed. */
export interface ManualPage {
  /** Of its file, without the ending; `index` is the manual's own page. */
  readonly name: string;
  readonly title: string;
  readonly root: Root;
}

/** The manual, a page for each of its files, and a page that lists them. */
export function manualPages(site: Site, pages: readonly ManualPage[]): Files {
  if (pages.length === 0) return new Map();
  const files = pages.map(
    (page) => [`${folderOf(page)}/index.html`, htmlBytes(manualPage(page, pages, site))] as const,
  );
  const home = pages.some(({ name }) => name === 'index') ? [] : [homePage(pages, site)];
  return new Map([...files, ...home]);
}

/**
 * Pages in the order in which the manual's own page leads to them; what it leaves out comes last, by file name. A page is
 * called by its heading of level 1.
 */
export function readManual(manual: Files | undefined): readonly ManualPage[] {
  const files = [...(manual ?? [])]
    .filter(([path]) => path.endsWith('.md'))
    .sort(([a], [b]) => (a < b ? -1 : 1));
  const pages = files.map(([path, bytes]) => {
    const root = parseMarkdown(new TextDecoder().decode(bytes), 0);
    const title = root.children.find((node) => node.type === 'heading' && node.depth === 1);
    const name = path.replace(/\.md$/, '').toLowerCase();
    return { name, title: title ? plainText(title) : name, root };
  });
  const order = ['index', ...linksOf(pages.find(({ name }) => name === 'index'))];
  const placeOf = ({ name }: ManualPage) => (order.includes(name) ? order.indexOf(name) : order.length);
  return pages.sort((a, b) => placeOf(a) - placeOf(b));
}

/** The pages that a page leads to, by name. */
function linksOf(page: ManualPage | undefined): readonly string[] {
  const nodes = page ? withAllBelow(page.root) : [];
  return nodes.flatMap((node) => (node.type === 'link' ? [node.url.replace(/\.md$/, '')] : []));
}

export const folderOf = ({ name }: Pick<ManualPage, 'name'>): string =>
  name === 'index' ? 'manual' : `manual/${name}`;

function manualPage(page: ManualPage, pages: readonly ManualPage[], site: Site) {
  const root = page.name === 'index' ? '../' : '../../';
  const { children } = page.root;
  const idOf = freeSlugs();
  const content = renderProse(
    children.filter((node) => !(node.type === 'heading' && node.depth === 1)),
    children.filter((node): node is Definition => node.type === 'definition'),
    {
      addressOf: addressesFrom(root, pages),
      amountOf: () => undefined,
      pictureOf: () => undefined,
      print: (text) => text,
      deeper: 0,
      idOf,
    },
  );
  return textPage({
    site,
    root,
    title: page.title,
    content,
    headings: headingsOf(content),
    pages: listFrom(root, pages, page),
  });
}

/** Its headings of level 2, with the ids that rendering gave them. */
function headingsOf(content: readonly ElementContent[]): readonly { id: string; text: string }[] {
  const headings = content.filter(
    (node): node is Element => node.type === 'element' && node.tagName === 'h2',
  );
  return headings.map((heading) => ({ id: String(heading.properties.id), text: lettersOf(heading) }));
}

function lettersOf(node: ElementContent): string {
  if (node.type === 'text') return node.value;
  return node.type === 'element' ? node.children.map(lettersOf).join('') : '';
}

function homePage(pages: readonly ManualPage[], site: Site): readonly [string, Uint8Array] {
  const title = pageWords.places.manual;
  return [
    'manual/index.html',
    htmlBytes(
      textPage({ site, root: '../', title, content: [], headings: [], pages: listFrom('../', pages) }),
    ),
  ];
}

function listFrom(root: string, pages: readonly ManualPage[], here?: ManualPage) {
  return pages.map((page) => ({
    name: page.title,
    href: `${root}${folderOf(page)}/index.html`,
    isThis: page === here,
  }));
}

/** `limits.md#rounding` leads to the page made of that file; other relative addresses lead nowhere. */
function addressesFrom(root: string, pages: readonly ManualPage[]): (written: string) => string | undefined {
  return (written) => {
    if (/^(https?|mailto|tel):/.test(written)) return written;
    if (written.startsWith('#')) return `#text-${written.slice(1)}`;
    const [, name, anchor] = /^(?:\.\/)?([\w-]+)\.md(?:#([\w-]+))?$/.exec(written) ?? [];
    const page = pages.find((known) => known.name === name?.toLowerCase());
    return page && `${root}${folderOf(page)}/index.html${anchor === undefined ? '' : `#text-${anchor}`}`;
  };
}
