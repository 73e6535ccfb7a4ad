import type { Element } from 'hast';
import type { Workspace } from '../../core/model/workspace.ts';
import type { ReadWorkspace } from '../../reading/read.ts';
import { firstAtOnce, imageOf } from '../../rendering/figures.ts';
import { htmlBytes } from '../../rendering/html.ts';
import { guidePage } from '../../../templates/guide/guide-page.tsx';
import type { GuideView } from '../../../templates/guide/guide-view.ts';
import type { Site } from '../../../templates/page/site.ts';
import { guideData, guideDataFiles } from './guide-data.ts';
import { picturesOf, type PublishedPicture } from '../pictures/published-pictures.ts';
import { addressed, renderGuideProse } from '../prose/guide-prose.ts';
import { rootFrom } from '../paths/paths.ts';
import type { Pictures } from '../pictures/pictures.ts';
import type { PlannedGuide } from '../planned/planned-guides.ts';
import { plannerView } from './planner-view.ts';
import { sheetLinks, sheetPages } from '../sheets/sheet-pages.ts';
import type { Files } from '../paths/files.ts';

/** The page and the sheets to print of each guide at each level, and the pictures that they show. */
export function guidePages(
  site: Site,
  guides: readonly PlannedGuide[],
  workspace: Workspace,
  read: ReadWorkspace,
  finished: Pictures,
): Files {
  const files = new Map<string, Uint8Array>();
  const pictures = new Map(
    Object.values(workspace.guides).map((guide) => [
      guide.id,
      picturesOf({ folder: `guides/${guide.id}`, of: guide }, finished),
    ]),
  );
  for (const [id, ofGuide] of pictures) {
    for (const { name, bytes } of [...ofGuide.values()].flat()) files.set(`guides/${id}/${name}`, bytes);
  }
  for (const planned of guides) {
    const levels = levelLinks(planned, guides);
    for (const [name, bytes] of filesOf(
      planned,
      site,
      workspace,
      read,
      pictures.get(planned.written.id)!,
      levels,
    )) {
      files.set(`${planned.folder}/${name}`, bytes);
    }
  }
  return files;
}

function filesOf(
  planned: PlannedGuide,
  site: Site,
  workspace: Workspace,
  read: ReadWorkspace,
  pictures: ReadonlyMap<string, PublishedPicture>,
  levels: ReturnType<typeof levelLinks>,
): Files {
  const { guide, plan, line, batch, folder, written } = planned;
  const document = read.documents[written.id]!;
  const prose = renderGuideProse(planned, document, workspace, pictures);
  const view = { site, root: rootFrom(folder), guide, plan, line, batch, levels, ...prose };
  const shown = {
    pictures: checkPictures(planned, pictures),
    planner: plannerView(planned, workspace),
    sheetHref: 'bench-sheet/index.html',
    sheets: sheetLinks(planned),
    ...(plan.cutting.length > 0 ? { cutHref: 'cutting-plan/index.html' } : {}),
    ...(planned.curve ? { curve: planned.curve } : {}),
    data: guideData(planned, prose, workspace),
  };
  return new Map([
    ['index.html', htmlBytes(firstAtOnce(guidePage({ ...view, ...shown })))],
    ...guideDataFiles(planned, workspace),
    ...sheetPages({
      planned,
      site,
      workspace,
      read,
      paper: workspace.program.paper,
      isFixed: false,
      query: '',
    }),
  ]);
}

/** All levels of a guide, each with the way to its page from this one. Empty where it has one. */
function levelLinks(planned: PlannedGuide, guides: readonly PlannedGuide[]): GuideView['levels'] {
  const all = guides.filter(({ written }) => written.id === planned.written.id);
  return planned.written.levels.map(({ id, name }) => {
    const page = all.find(({ level }) => level === id)!;
    return { id, name, href: `${rootFrom(planned.folder)}${page.folder}/index.html` };
  });
}

/** What is right and what is wrong, with the question of its check as alternative text. */
function checkPictures(
  planned: PlannedGuide,
  pictures: ReadonlyMap<string, PublishedPicture>,
): Readonly<Record<string, Element>> {
  const shown = planned.guide.checks.flatMap(({ like, unlike, what }) =>
    [like, unlike].flatMap((file) => {
      const picture = addressed(pictures.get(file ?? ''), planned);
      return picture ? [[file!, imageOf(picture, what.text)] as const] : [];
    }),
  );
  return Object.fromEntries(shown);
}
