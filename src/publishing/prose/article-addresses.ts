import type { Workspace } from '../../core/model/workspace.ts';
import { rootFrom } from '../paths/paths.ts';

/** What has a page, or an entry on one, that any other page may lead to. */
export type Article = 'guide' | 'material' | 'module' | 'tool';

/** Where an article is found, from a folder of the edition; undefined where there is none of that name. */
export function articleAddress(
  kind: Article,
  id: string,
  folder: string,
  workspace: Workspace,
): string | undefined {
  return workspace[`${kind}s`][id] ? `${rootFrom(folder)}${pathOf[kind](id)}` : undefined;
}

const pathOf: Readonly<Record<Article, (id: string) => string>> = {
  guide: (id) => `guides/${id}/index.html`,
  material: (id) => `materials/index.html#material-${id}`,
  module: (id) => `modules/${id}/index.html`,
  tool: (id) => `tools/index.html#tool-${id}`,
};

/** Kinds of link that lead off the site; the reader's browser opens them, the page never does. */
const outward: readonly string[] = ['http', 'https', 'mailto', 'tel'];

/** An address as prose writes it, taken apart: `material:felt` -> `['material', 'felt']`. */
export function linkParts(written: string): readonly [kind: string, target: string] {
  const [, kind = '', target = ''] = /^([a-z]+):(.*)$/s.exec(written) ?? [];
  return [kind, target];
}

export function leadsOff(kind: string): boolean {
  return outward.includes(kind);
}
