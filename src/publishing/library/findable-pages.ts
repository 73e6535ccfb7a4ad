import { isForStaff } from '../../core/model/for-staff.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { FindablePage } from '../../exports/search-library.ts';
import type { ReadWorkspace } from '../../reading/read.ts';
import { plainWords } from '../../rendering/plain-words.ts';
import { properly } from '../../showing/text/author-text.ts';
import { showModule } from '../../showing/module/show-module.ts';
import {
  type ShownArticle,
  showMaterialArticles,
  showToolArticles,
} from '../../showing/library/show-library.ts';
import { fill } from '../../showing/text/fill.ts';
import { pageWords } from '../../words/pages.ts';
import { searchWords } from '../../words/search.ts';
import { folderOf, type ManualPage } from './manual-pages.ts';
import { manualSections } from './manual-sections.ts';
import type { PlannedGuide } from '../planned/planned-guides.ts';
import type { PlannedModule } from '../planned/planned-modules.ts';

/** Everything that the search finds, guides first: the index takes in what is most looked for before the rest. */
export function findablePages(
  guides: readonly PlannedGuide[],
  modules: readonly PlannedModule[],
  workspace: Workspace,
  read: ReadWorkspace,
  manual: readonly ManualPage[],
): readonly FindablePage[] {
  const usual = guides.filter(({ isUsual }) => isUsual);
  return [
    ...usual.map((planned) => guideEntry(planned, read)),
    ...modules.map((planned) => moduleEntry(planned, read)),
    ...showMaterialArticles(workspace).map((article) => articleEntry('material', article)),
    ...showToolArticles(workspace).map((article) => articleEntry('tool', article)),
    ...safetyEntries(),
    ...usual.flatMap(cautionEntries),
    ...usual.flatMap((planned) => stepEntries(planned, read)),
    ...manual.flatMap(manualEntries),
  ];
}

/** A guide by what it says outside its steps, and by what it is made of. */
function guideEntry(planned: PlannedGuide, read: ReadWorkspace): FindablePage {
  const { guide, folder, line, written } = planned;
  const names = [...line.materials, ...line.steps.flatMap(({ takes }) => takes)].map(({ name }) => name.text);
  const prose = written.prose.sections.flatMap(({ step }, i) =>
    step === undefined ? [sectionText(planned, read, i)] : [],
  );
  return {
    href: `${folder}/index.html`,
    kind: 'guide',
    title: guide.title.text,
    of: '',
    says: guide.trains.text || guide.summary.text,
    text: [guide.summary.text, ...prose, [...new Set(names)].join(', ')].join(' '),
  };
}

/** A module by what everybody may read of it: its aims, its stations, its prose but for what is for instructors. */
function moduleEntry({ module, folder }: PlannedModule, { moduleDocuments }: ReadWorkspace): FindablePage {
  const shown = showModule(module);
  const document = moduleDocuments[module.id]!;
  const prose = module.prose.sections.flatMap((section, i) => {
    const { from, to } = document.sections[i]!;
    return isForStaff(section) ? [] : [properly(plainWords(document.root.children.slice(from, to)))];
  });
  const aims = shown.objectives.map(({ does }) => does.text);
  const stations = shown.stations.map(({ name }) => name.text);
  return {
    href: `${folder}/index.html`,
    kind: 'module',
    title: shown.title.text,
    of: '',
    says: shown.summary.text,
    text: [...aims, ...stations, shown.audience.text, ...prose].join(' '),
  };
}

function stepEntries(planned: PlannedGuide, read: ReadWorkspace): readonly FindablePage[] {
  const { guide, folder, line, written } = planned;
  return line.steps.map(({ id, heading, takes, cautions: [worst] }) => {
    const section = written.prose.sections.findIndex(({ step }) => step === id);
    return {
      href: `${folder}/index.html#step-${id}`,
      kind: 'step',
      title: heading.text,
      of: worst
        ? fill(searchWords.stepOf, { guide: guide.title.text, signal: worst.word.text })
        : guide.title.text,
      says: '',
      text: [
        section < 0 ? '' : sectionText(planned, read, section),
        takes.map(({ name }) => name.text).join(', '),
      ].join(' '),
    };
  });
}

/** What stands below a heading, as letters. */
function sectionText({ written }: PlannedGuide, { documents }: ReadWorkspace, index: number): string {
  const document = documents[written.id];
  const section = document?.sections[index];
  if (!document || !section) return '';
  const nodes = document.root.children.slice(section.from, section.to);
  const below = written.prose.sections[index]?.heading === '' ? nodes : nodes.slice(1);
  return properly(plainWords(below));
}

function cautionEntries({ guide, folder, line }: PlannedGuide): readonly FindablePage[] {
  return line.cautions.map(({ id, word, hazard, harm, avoid }) => ({
    href: `${folder}/index.html#caution-${id}`,
    kind: 'safety',
    title: `${word.text}: ${hazard.text}`,
    of: guide.title.text,
    says: [harm.text, ...avoid.map(({ text }) => text)].join(' '),
    text: '',
  }));
}

function safetyEntries(): readonly FindablePage[] {
  const { safety: words } = pageWords;
  const entry = (id: string, title: string, says: string, text: string): FindablePage => ({
    href: `safety/index.html#${id}`,
    kind: 'safety',
    title,
    of: words.title,
    says,
    text,
  });
  return [
    entry('first', words.first, words.lead, words.order.join(' ')),
    entry('signals', words.signals, words.signalsSay, Object.values(words.meanings).join(' ')),
    entry('hazards', words.hazards, words.hazardsSay, ''),
  ];
}

function articleEntry(kind: 'material' | 'tool', { id, name, must, dangers }: ShownArticle): FindablePage {
  return {
    href: `${kind}s/index.html#${kind}-${id}`,
    kind,
    title: name.text,
    of: '',
    says: must.map(({ text }) => text).join(', '),
    text: dangers.map(({ text }) => text).join('; '),
  };
}

function manualEntries(page: ManualPage): readonly FindablePage[] {
  const address = `${folderOf(page)}/index.html`;
  return manualSections(page).map(({ id, heading, text }) => ({
    href: id === '' ? address : `${address}#${id}`,
    kind: 'manual',
    title: heading || page.title,
    of: heading === '' ? '' : page.title,
    says: '',
    text,
  }));
}
