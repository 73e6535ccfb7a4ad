import type { Element } from 'hast';
import type { Workspace } from '../core/model/workspace.ts';
import type { ReadWorkspace } from '../reading/read.ts';
import { figure } from '../rendering/figures.ts';
import { htmlBytes } from '../rendering/html.ts';
import { pageMargins } from '../rendering/page-margins.ts';
import { fill } from '../showing/fill.ts';
import { modelRows } from '../showing/show-model-numbers.ts';
import { sheetWords } from '../words/sheets.ts';
import { cutCautions } from '../showing/cut-cautions.ts';
import { benchSheet } from '../../templates/bench-sheet.tsx';
import { cuttingSheet } from '../../templates/cutting-sheet.tsx';
import { guidePage } from '../../templates/guide-page.tsx';
import type { Site } from '../../templates/page.tsx';
import { picturesOf, type PublishedPicture } from './guide-pictures.ts';
import { addressed, renderGuideProse, renderSheetProse } from './guide-prose.ts';
import { rootFrom } from './paths.ts';
import type { PlannedGuide } from './planned-guides.ts';
import type { Files } from './site.ts';

/** The page, the bench sheet and the cutting plan of each guide at each level, and the pictures that they show. */
export function guidePages(
  site: Site,
  guides: readonly PlannedGuide[],
  workspace: Workspace,
  read: ReadWorkspace,
): Files {
  const files = new Map<string, Uint8Array>();
  const pictures = new Map(
    Object.values(workspace.guides).map((guide) => [guide.id, picturesOf(guide, read)]),
  );
  for (const [id, ofGuide] of pictures) {
    for (const { name, bytes } of ofGuide.values()) files.set(`guides/${id}/${name}`, bytes);
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
  const { guide, plan, line, batch, folder, written, made } = planned;
  const document = read.documents[written.id]!;
  const prose = renderGuideProse(planned, document, workspace, pictures);
  const view = { site, root: rootFrom(folder), guide, plan, line, batch, levels, ...prose };
  const sheet = {
    language: site.language,
    root: rootFrom(`${folder}/bench-sheet`),
    back: '../index.html',
    guide,
    plan,
    line,
    batch,
    models: modelRows('models', made),
    steps: renderSheetProse(planned, document).steps,
  };
  const shown = {
    pictures: checkPictures(planned, pictures),
    sheetHref: 'bench-sheet/index.html',
    ...(plan.cutting.length > 0 ? { cutHref: 'cutting-plan/index.html' } : {}),
    ...(planned.curve ? { curve: planned.curve } : {}),
  };
  return new Map([
    ['index.html', htmlBytes(guidePage({ ...view, ...shown }))],
    ['bench-sheet/index.html', htmlBytes(benchSheet(sheet))],
    ['bench-sheet/head.css', sheetMargins(planned, site, sheetWords)],
    ...(plan.cutting.length > 0 ? cuttingFiles(planned, site) : []),
  ]);
}

function cuttingFiles(planned: PlannedGuide, site: Site): readonly (readonly [string, Uint8Array])[] {
  const { guide, plan, line, batch, folder } = planned;
  const sheet = {
    language: site.language,
    root: rootFrom(`${folder}/cutting-plan`),
    back: '../index.html',
    guide,
    plan,
    batch,
    title: line.title.text,
    cautions: cutCautions(plan, line),
  };
  return [
    ['cutting-plan/index.html', htmlBytes(cuttingSheet(sheet))],
    ['cutting-plan/head.css', sheetMargins(planned, site, sheetWords.cutting)],
  ];
}

/** All levels of a guide, each with the way to its page from this one. Empty where it has one. */
function levelLinks(
  planned: PlannedGuide,
  guides: readonly PlannedGuide[],
): readonly { id: string; name: string; href: string }[] {
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
      return picture ? [[file!, figure(picture, what.text, '').children[0] as Element] as const] : [];
    }),
  );
  return Object.fromEntries(shown);
}

/** What the margins of a sheet say, as the file beside it. */
function sheetMargins(
  { guide, line, batch }: PlannedGuide,
  site: Site,
  { head, headNoVersion }: { readonly head: string; readonly headNoVersion: string },
): Uint8Array {
  const version = guide.version.text;
  const facts = { guide: line.title.text, batch };
  const title =
    version === '' ? fill<string>(headNoVersion, facts) : fill<string>(head, { ...facts, version });
  const style = pageMargins({
    title,
    batchNumber: sheetWords.batchNumber,
    program: site.program,
    page: sheetWords.page,
  });
  return new TextEncoder().encode(style);
}
