import { htmlBytes } from '../rendering/html.ts';
import { cataloguePage } from '../../templates/catalogue-page.tsx';
import type { Site } from '../../templates/page.tsx';
import type { PlannedGuide } from './planned-guides.ts';
import type { Files } from './site.ts';

/** `index.html`: all guides, each at its usual level, with the ways to its other levels. */
export function cataloguePages(site: Site, guides: readonly PlannedGuide[]): Files {
  const listed = guides
    .filter(({ isUsual }) => isUsual)
    .map(({ guide, plan, line, batch, folder, written }) => ({
      guide,
      plan,
      line,
      batch,
      href: `${folder}/index.html`,
      levels: written.levels.map(({ id, name }) => ({
        id,
        name,
        href: `${guides.find((other) => other.written === written && other.level === id)!.folder}/index.html`,
      })),
    }));
  return new Map([['index.html', htmlBytes(cataloguePage(site, listed))]]);
}
