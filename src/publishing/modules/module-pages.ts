import { isToHandOut } from '../../checks/lookup/module-file-kind.ts';
import { fileNamed } from '../../core/model/file-named.ts';
import type { Module } from '../../core/model/module.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { ReadWorkspace } from '../../reading/read.ts';
import { drawn } from '../../rendering/drawn.ts';
import { firstAtOnce } from '../../rendering/figures.ts';
import { htmlBytes } from '../../rendering/html.ts';
import { moduleOrder } from '../../showing/figures/module-order.ts';
import { drawOrder } from '../../showing/module/draw-order.ts';
import type { ShownModule } from '../../showing/module/show-module.ts';
import { modulePage } from '../../../templates/module/module-page.tsx';
import { modulesPage } from '../../../templates/module/modules-page.tsx';
import type { ModuleContext } from './module-context.ts';
import { moduleJsonLd } from './module-data.ts';
import { renderModuleProse, shownTo } from '../prose/module-prose.ts';
import { moduleSheetFiles, moduleSheetIds } from './module-sheets.ts';
import { freeName, rootFrom, safeFileName } from '../paths/paths.ts';
import type { PlannedModule } from '../planned/planned-modules.ts';
import { picturesOf } from '../pictures/published-pictures.ts';
import { sessionFiles } from './session-pages.ts';
import type { Files } from '../paths/files.ts';

/** The list of modules, the page of each that trainees read, and for staff what they need to run it. */
export function modulePages(modules: readonly PlannedModule[], context: ModuleContext): Files {
  if (modules.length === 0) return new Map();
  return new Map([
    ['modules/index.html', htmlBytes(listPage(modules, context))],
    ...modules.flatMap((planned) =>
      [...filesOf(planned, context)].map(([name, bytes]) => [`${planned.folder}/${name}`, bytes] as const),
    ),
  ]);
}

function listPage(modules: readonly PlannedModule[], { site, workspace }: ModuleContext) {
  const written = modules.map(({ module }) => module);
  return modulesPage({
    site,
    modules: modules.map(({ module, guides, shown }) => ({
      module: shown.module,
      href: `${module.id}/index.html`,
      after: modulesBefore(module, workspace).map(({ id, title }) => ({
        name: title,
        href: `${id}/index.html`,
      })),
      models: guides.map(({ line, folder }) => ({
        name: line.title.text,
        href: `../${folder}/index.html`,
      })),
    })),
    ...(written.some(({ after }) => after.length > 0)
      ? { order: drawn(moduleOrder(drawOrder(written))) }
      : {}),
  });
}

function modulesBefore({ after }: Module, { modules }: Workspace): readonly Module[] {
  return after.flatMap((id) => modules[id] ?? []);
}

function filesOf(planned: PlannedModule, context: ModuleContext): Files {
  const { shown } = planned;
  const isForStaff = context.edition === 'staff';
  return new Map([
    ...traineeFiles(planned, context),
    ...moduleSheetFiles(shown, moduleSheetIds(shown, isForStaff), context.site),
    ...(isForStaff ? sessionFiles(planned, context) : []),
  ]);
}

function traineeFiles(planned: PlannedModule, context: ModuleContext): Files {
  const { module, folder, guides, shown } = planned;
  const { site, workspace, read, edition } = context;
  const root = rootFrom(folder);
  const pictures = picturesOf({ folder, of: shownTo('all', module) }, context.pictures);
  const prose = renderModuleProse(module, read.moduleDocuments[module.id]!, workspace, pictures);
  const beside = filesBeside(module, read);
  const page = modulePage({
    site,
    root,
    module: withNames(shown.module, module, beside),
    day: shown.day,
    room: shown.room,
    models: guides.map(({ folder }, i) => ({ ...shown.models[i]!, href: `${root}${folder}/index.html` })),
    after: modulesBefore(module, workspace).map(({ id, title }) => ({
      name: title,
      href: `../${id}/index.html`,
    })),
    sections: prose.all,
    handOut: 'hand-out/index.html',
    jsonLd: moduleJsonLd(planned, workspace),
    ...(edition === 'staff' ? { staffHref: 'session/index.html' } : {}),
  });
  return new Map([
    ['index.html', htmlBytes(firstAtOnce(page))],
    ...[...beside.values()].map(({ name, bytes }) => [name, bytes] as const),
    ...[...pictures.values()].flat().map(({ name, bytes }) => [name, bytes] as const),
  ]);
}

type Beside = ReadonlyMap<string, { readonly name: string; readonly bytes: Uint8Array }>;

/**
 * Texts and films that the preparation names and that lie beside the module, by the name that it gives them. What a
 * browser would open as a page of the site is none of them, nor is the table of judges.
 */
function filesBeside({ id, prepare, scoring }: Module, { files }: ReadWorkspace): Beside {
  const judges = scoring?.pass === undefined || scoring.pass === 'none' ? undefined : scoring.pass.judges;
  const named = new Set(prepare.flatMap(({ what, text }) => [what, text ?? '']));
  const taken = new Set(['index.html']);
  const there = [...named].filter(isToHandOut).flatMap((name) => {
    const file = fileNamed(name) ?? name;
    const bytes = file === fileNamed(judges ?? '') ? undefined : files[`modules/${id}/${file}`];
    return bytes ? [[name, { name: freeName(safeFileName(file), taken), bytes }] as const] : [];
  });
  return new Map(there);
}

function withNames(shown: ShownModule, { prepare }: Module, beside: Beside): ShownModule {
  const named = shown.prepare.map((item, i) => {
    const [file, text] = [prepare[i]!.what, prepare[i]!.text].map((name) => beside.get(name ?? '')?.name);
    return { ...item, ...(file ? { file } : {}), ...(text ? { text } : {}) };
  });
  return { ...shown, prepare: named };
}
