import type { Definition, Image, ImageReference, Link, LinkReference, Nodes, Root } from 'mdast';
import type { Prose, ProseImage, ProseLink, ProsePlace, Section } from '../../core/model/prose.ts';
import { linkKinds } from '../../core/model/prose.ts';
import { freeSlugs } from '../../core/slug.ts';

/** The prose of a guide as it was parsed, for whoever renders it; its facts stand in the guide's `Prose`. */
export interface MarkdownDocument {
  readonly root: Root;
  /** Children of the root that each section takes, its heading first; in step with `prose.sections`. */
  readonly sections: readonly { readonly from: number; readonly to: number }[];
  /** Index into `prose.links` of each link's node. */
  readonly links: ReadonlyMap<Nodes, number>;
  /** Index into `prose.images` of each image's node. */
  readonly images: ReadonlyMap<Nodes, number>;
}

/** What the facts of the prose need to know of the folder. */
export type FileExists = (file: string) => boolean;

/** The prose as facts, and as a tree with the way from one to the other. */
export function readDocument(
  root: Root,
  exists: FileExists,
): { readonly prose: Prose; readonly document: MarkdownDocument } {
  const ranges = sectionRanges(root);
  const definitions = definitionsOf(root);
  const [links, images] = [new Map<Nodes, number>(), new Map<Nodes, number>()];
  const prose = { sections: sectionsOf(root, ranges), links: [] as ProseLink[], images: [] as ProseImage[] };
  for (const [section, { from, to }] of ranges.entries()) {
    for (const node of root.children.slice(from, to).flatMap((node) => withAllBelow(node))) {
      const link = linkOf(node, definitions, section);
      if (link) links.set(node, prose.links.push(link) - 1);
      const image = imageOf(node, definitions, section, exists);
      if (image) images.set(node, prose.images.push(image) - 1);
    }
  }
  return { prose, document: { root, sections: ranges, links, images } };
}

/** A heading of level 2 opens a section; what stands before the first is one of its own, where there is any. */
function sectionRanges(root: Root): readonly { from: number; to: number }[] {
  const starts = root.children.flatMap((node, index) =>
    node.type === 'heading' && node.depth === 2 ? [index] : [],
  );
  const all = root.children.length > 0 && starts[0] !== 0 ? [0, ...starts] : starts;
  return all.map((from, index) => ({ from, to: all[index + 1] ?? root.children.length }));
}

function sectionsOf(root: Root, ranges: readonly { from: number; to: number }[]): readonly Section[] {
  const slugOf = freeSlugs();
  return ranges.map(({ from, to }) => {
    const first = root.children[from]!;
    const heading = first.type === 'heading' && first.depth === 2 ? textOf(first).trim() : '';
    const has = root.children.slice(from, to).flatMap((node) => partOf(node) ?? []);
    return {
      heading,
      slug: heading === '' ? '' : slugOf(heading),
      has: [...new Set(has)],
      at: placeOf(first),
    };
  });
}

const parts: Readonly<Record<string, Section['has'][number]>> = {
  'be careful': 'be-careful',
  'right when': 'right-when',
  'if not': 'if-not',
};

/** Which of the headings of level 3 that are read as what they say a node is. */
export function partOf(node: Nodes): Section['has'][number] | undefined {
  if (node.type !== 'heading' || node.depth !== 3) return undefined;
  return parts[textOf(node).trim().toLowerCase().replace(/[:.]$/, '')];
}

/** The letters of a node and all below it. */
export function textOf(node: Nodes): string {
  if ('value' in node) return node.value;
  if ('alt' in node) return node.alt ?? '';
  return 'children' in node ? node.children.map(textOf).join('') : node.type === 'break' ? ' ' : '';
}

/** The same prose, with the words of each section for whoever counts them. */
export function withTexts(prose: Prose, { root, sections }: MarkdownDocument): Prose {
  const textIn = ({ from, to }: MarkdownDocument['sections'][number], { heading }: Section): string =>
    root.children
      .slice(heading === '' ? from : from + 1, to)
      .flatMap((node) => withAllBelow(node))
      .filter(({ type }) => holdsText.has(type))
      .map((node) => textOf(node).replaceAll(/\s+/g, ' ').trim())
      .join('\n');
  return {
    ...prose,
    sections: prose.sections.map((section, i) => ({ ...section, text: textIn(sections[i]!, section) })),
  };
}
const holdsText: ReadonlySet<Nodes['type']> = new Set(['paragraph', 'heading', 'tableCell']);

/** A node and all below it, in the order of the text. */
export function withAllBelow(node: Nodes, found: Nodes[] = []): Nodes[] {
  found.push(node);
  if ('children' in node) for (const child of node.children) withAllBelow(child, found);
  return found;
}

type Definitions = ReadonlyMap<string, Definition>;

function definitionsOf(root: Root): Definitions {
  const all = withAllBelow(root).filter((node) => node.type === 'definition');
  return new Map(all.reverse().map((definition) => [definition.identifier, definition]));
}

function linkOf(node: Nodes, definitions: Definitions, section: number): ProseLink | undefined {
  if (node.type !== 'link' && node.type !== 'linkReference') return undefined;
  const [, kind, target] = /^([a-z]+):(.*)$/s.exec(addressOf(node, definitions)) ?? [];
  const text = textOf(node).replaceAll(/\s+/g, ' ').trim();
  const at = placeOf(node);
  const own = linkKinds.find((one) => one === kind);
  if (own) return { kind: own, target: decoded(target!), text, section, at };
  return { kind: 'other', target: addressOf(node, definitions), text, section, at };
}

function imageOf(
  node: Nodes,
  definitions: Definitions,
  section: number,
  exists: FileExists,
): ProseImage | undefined {
  if (node.type !== 'image' && node.type !== 'imageReference') return undefined;
  const file = decoded(addressOf(node, definitions));
  return { file, alt: node.alt ?? '', exists: exists(file), section, at: placeOf(node) };
}

function addressOf(node: Link | LinkReference | Image | ImageReference, definitions: Definitions): string {
  return 'url' in node ? node.url : (definitions.get(node.identifier)?.url ?? '');
}

/** `wet%20felt.jpg` -> `wet felt.jpg`; as written where it is no proper escape. */
function decoded(address: string): string {
  try {
    return decodeURIComponent(address);
  } catch {
    return address;
  }
}

/** The first line of a node. */
export function placeOf(node: Nodes): ProsePlace {
  const { start, end } = node.position!;
  const length = end.line === start.line ? end.column - start.column : 1;
  return { line: start.line, column: start.column, length: Math.max(1, length) };
}
