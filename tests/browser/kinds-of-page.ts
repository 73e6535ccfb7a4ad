import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

/** One page of each kind in a published folder, by kind: of several of a kind the one that says most. */
export function pageOfEachKind(folder: string): readonly (readonly [kind: string, path: string])[] {
  const largest = new Map<string, { readonly path: string; readonly size: number }>();
  for (const path of pagesIn(folder)) {
    const html = readFileSync(join(folder, path), 'utf8');
    const kind =
      kindOf(path) + (/class="draft"/.test(html) && path.startsWith('trainees/guides/') ? ', a draft' : '');
    if (html.length > (largest.get(kind)?.size ?? 0)) largest.set(kind, { path, size: html.length });
  }
  return [...largest].map(([kind, { path }]) => [kind, path] as const).sort(([a], [b]) => (a < b ? -1 : 1));
}

export function pagesIn(folder: string): readonly string[] {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  return files
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => path.endsWith('.html'))
    .sort();
}

// `index.html` is the door, `trainees/guides/needle-block/index.html` is of `guides/*`, the page of a level of it is of
// `guides/*/*`; sheets, those of levels too, go by their names.
function kindOf(path: string): string {
  const [, ...folders] = path.split('/').slice(0, -1);
  if (path === 'index.html') return 'door';
  if (folders.length === 0) return 'catalogue';
  const [place, ...below] = folders;
  const last = below.at(-1);
  if (place !== 'guides' && place !== 'modules') return below.length === 0 ? place! : `${place}/*`;
  if (below.length < 2) return `${place}/*`;
  return place === 'modules' || sheetNames.test(last!) ? last! : `${place}/*/*`;
}

/** Levels have ids of their author's making; sheets are called by what they are. */
const sheetNames = /-(sheet|plan|list|record)$|^(labels|patterns|sheets?)$/;
