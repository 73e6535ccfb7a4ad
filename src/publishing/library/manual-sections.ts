import type { RootContent } from 'mdast';
import { freeSlugs } from '../../core/slug.ts';
import { plainWords } from '../../rendering/plain-words.ts';
import { plainText } from '../../rendering/prose.ts';
import type { ManualPage } from './manual-pages.ts';

/** A stretch of a manual's page below a heading, with the id that its page gives that heading. */
export interface ManualSection {
  /** Empty for what stands before any heading. */
  readonly id: string;
  readonly heading: string;
  readonly text: string;
}

/** A page of the manual in sections: a new one begins at each heading of level 2. */
export function manualSections({ root }: ManualPage): readonly ManualSection[] {
  const idOf = freeSlugs();
  const sections: { id: string; heading: string; nodes: RootContent[] }[] = [
    { id: '', heading: '', nodes: [] },
  ];
  for (const node of root.children) {
    if (node.type === 'heading' && node.depth === 1) continue;
    const id = node.type === 'heading' ? `text-${idOf(plainText(node))}` : '';
    if (node.type === 'heading' && node.depth === 2) {
      sections.push({ id, heading: plainText(node), nodes: [] });
    } else sections.at(-1)!.nodes.push(node);
  }
  return sections.map(({ id, heading, nodes }) => ({
    id,
    heading,
    text: plainWords(nodes),
  }));
}
