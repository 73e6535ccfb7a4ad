import { htmlBytes } from '../../rendering/html.ts';
import { fill } from '../../showing/text/fill.ts';
import { showCount } from '../../showing/text/numbers.ts';
import type { ShownCatalogue } from '../../showing/shown/shown-catalogue.ts';
import { catalogueWords } from '../../words/catalogue.ts';
import { cataloguePage } from '../../../templates/library/catalogue-page.tsx';
import type { Site } from '../../../templates/page/site.ts';
import type { PlannedGuide } from '../planned/planned-guides.ts';
import type { Files } from '../paths/files.ts';

/**
 * `index.html`: all guides, each at its usual level, with the ways to its other levels.
 *
 * @param catalogue  Of the guides at their usual levels, in their order.
 */
export function cataloguePages(
  site: Site,
  guides: readonly PlannedGuide[],
  catalogue: ShownCatalogue,
): Files {
  const usual = guides.filter(({ isUsual }) => isUsual);
  const listed = usual.map(({ guide, batch, folder, written }, i) => ({
    guide,
    batch,
    href: `${folder}/index.html`,
    entry: catalogue.entries[i]!,
    levels: written.levels.map(({ id, name }) => ({
      id,
      name,
      href: `${guides.find((other) => other.written === written && other.level === id)!.folder}/index.html`,
    })),
  }));
  const { one, many } = catalogueWords.all;
  const count = usual.length === 1 ? one : fill(many, { all: showCount(usual.length) });
  return new Map([['index.html', htmlBytes(cataloguePage(site, listed, catalogue, count))]]);
}
