import type { Diagnostic } from '../core/diagnostic.ts';
import type { Origins } from '../core/model/origins.ts';
import type { Workspace } from '../core/model/workspace.ts';
import { minorDigitsIn } from './currencies.ts';
import { reportIds, type Muddled } from './ids.ts';
import { layOut, type FileFound } from './layout.ts';
import { makeOrigins } from './origins.ts';
import type { MarkdownDocument } from './prose/document.ts';
import {
  readGuideFile,
  readMaterialFile,
  readModuleFile,
  readProgramFile,
  readToolFile,
  type ReadFile,
} from './read-file.ts';
import { withJudged } from './judges.ts';
import { inReadingOrder, makeReport } from './report.ts';
import type { Sheet } from './sheet/sheet.ts';

/** A workspace as it was read, and all that was wrong with it. */
export interface ReadWorkspace {
  /** Absent without a readable `program.yaml`. Holds only what could be read. */
  readonly workspace?: Workspace;
  readonly origins: Origins;
  /** The prose of each guide of the workspace, parsed once. */
  readonly documents: Readonly<Record<string, MarkdownDocument>>;
  /** The same of each module. */
  readonly moduleDocuments: Readonly<Record<string, MarkdownDocument>>;
  /** Photos and patterns, by path below the workspace. */
  readonly files: Readonly<Record<string, Uint8Array>>;
  /** What is there but could not be read: `materials/felt`. Whoever looks for it says nothing of it. */
  readonly unread: readonly string[];
  /** By file and line. */
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * A workspace from the bytes of its files, by path below it. Pure: what is wrong comes back as diagnostics, all of it
 * in one run, and each file is read once.
 *
 * @param refused  What the disk would not give, with its reasons.
 */
export function read(
  files: ReadonlyMap<string, Uint8Array>,
  refused: readonly Diagnostic[] = [],
): ReadWorkspace {
  const { report, found } = makeReport();
  const layout = layOut(files, refused, report);
  const program = layout.program ? readProgramFile(layout.program, report) : {};
  const materials = each(layout.materials, (file, id) => readMaterialFile(file, id, report));
  const tools = each(layout.tools, (file, id) => readToolFile(file, id, report));
  const guides = each(layout.guides, (file, id) => readGuideFile(file, id, files, report));
  const modules = each(layout.modules, (file, id) => {
    const module = readModuleFile(file, id, files, report);
    return module.value ? { ...module, value: withJudged(module.value, files, report) } : module;
  });
  const kinds = { materials, tools, guides, modules };
  const origins = makeOrigins(sheetsOf(program, kinds));
  const sound = {
    materials: valuesOf(materials),
    tools: valuesOf(tools),
    guides: valuesOf(guides),
    modules: valuesOf(modules),
  };
  const muddled = reportIds(sound, origins, report);
  const kept = {
    ...sound,
    guides: without(sound.guides, muddled.guides),
    modules: without(sound.modules, muddled.modules),
  };
  return {
    ...(program.value
      ? {
          workspace: {
            program: { ...program.value, minorDigits: minorDigitsIn(program.value, kept) },
            ...kept,
          },
        }
      : {}),
    origins,
    documents: documentsOf(kept.guides, guides),
    moduleDocuments: documentsOf(kept.modules, modules),
    files: layout.attachments,
    unread: [...layout.unread, ...unreadOf(kinds), ...muddledNames(muddled)].sort(),
    diagnostics: inReadingOrder([...refused, ...found]),
  };
}

type Kinds = Readonly<
  Record<'materials' | 'tools' | 'guides' | 'modules', ReadonlyMap<string, ReadFile<unknown>>>
>;

function documentsOf(
  kept: Readonly<Record<string, unknown>>,
  read: ReadonlyMap<string, ReadFile<unknown>>,
): ReadWorkspace['documents'] {
  return Object.fromEntries(Object.keys(kept).map((id) => [id, read.get(id)!.document!]));
}

function muddledNames({ guides, modules }: Muddled): readonly string[] {
  return [...[...guides].map((id) => `guides/${id}`), ...[...modules].map((id) => `modules/${id}`)];
}

function each<T>(
  files: ReadonlyMap<string, FileFound>,
  reader: (file: FileFound, id: string) => ReadFile<T>,
): ReadonlyMap<string, ReadFile<T>> {
  return new Map([...files].map(([id, file]) => [id, reader(file, id)]));
}

function valuesOf<T>(read: ReadonlyMap<string, ReadFile<T>>): Readonly<Record<string, T>> {
  return Object.fromEntries(
    [...read].flatMap(([id, { value }]) => (value === undefined ? [] : [[id, value] as const])),
  );
}

function without<T>(
  values: Readonly<Record<string, T>>,
  ids: ReadonlySet<string>,
): Readonly<Record<string, T>> {
  return Object.fromEntries(Object.entries(values).filter(([id]) => !ids.has(id)));
}

function sheetsOf(program: ReadFile<unknown>, kinds: Kinds): ReadonlyMap<string, Sheet> {
  const named = Object.entries(kinds).flatMap(([kind, files]) =>
    [...files].map(([id, file]) => [`${kind}/${id}`, file] as const),
  );
  const all = [['program', program] as const, ...named];
  return new Map(all.flatMap(([name, { sheet }]) => (sheet ? [[name, sheet] as const] : [])));
}

function unreadOf(kinds: Kinds): string[] {
  return Object.entries(kinds).flatMap(([kind, files]) =>
    [...files].filter(([, { value }]) => value === undefined).map(([id]) => `${kind}/${id}`),
  );
}
