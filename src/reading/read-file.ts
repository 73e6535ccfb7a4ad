import type { Guide } from '../core/model/guide.ts';
import type { Material } from '../core/model/material.ts';
import type { Module } from '../core/model/module.ts';
import type { Prose } from '../core/model/prose.ts';
import type { Tool } from '../core/model/tool.ts';
import { decode } from './text/decode.ts';
import { splitFrontMatter } from './text/front-matter.ts';
import { readGuide } from './guide/guide.ts';
import type { FileFound } from './layout.ts';
import { limits } from './limits.ts';
import { readMaterial } from './material.ts';
import { readModule } from './module/module.ts';
import { readProgram, type ProgramRead } from './program.ts';
import { withTexts, type MarkdownDocument } from './prose/document.ts';
import { readProse } from './prose/read-prose.ts';
import type { Report } from './report.ts';
import { readSheet } from './sheet/read-sheet.ts';
import type { Sheet } from './sheet/sheet.ts';
import { readTool } from './tool.ts';
import type { OpenFile } from './sheet/written.ts';

/** What came of one file: its sheet where it is YAML, its value where nothing in it was refused. */
export interface ReadFile<T> {
  readonly value?: T;
  readonly sheet?: Sheet;
  readonly document?: MarkdownDocument;
}

export const readProgramFile = (found: FileFound, report: Report): ReadFile<ProgramRead> =>
  readYamlFile(found, report, readProgram);
export const readMaterialFile = (found: FileFound, id: string, report: Report): ReadFile<Material> =>
  readYamlFile(found, report, (file) => readMaterial(id, file));
export const readToolFile = (found: FileFound, id: string, report: Report): ReadFile<Tool> =>
  readYamlFile(found, report, (file) => readTool(id, file));

function readYamlFile<T>(
  { file, bytes }: FileFound,
  report: Report,
  reader: (file: OpenFile) => T,
): ReadFile<T> {
  const source = decode(file, bytes, limits.frontMatterBytes, report);
  const sheet = source && readSheet(source, { text: source.text, offset: 0 }, report);
  return sheet ? whatIsSound({ sheet, report, refused: sheet.faulty }, reader) : {};
}

export const readGuideFile: MarkdownReader<Guide> = (found, id, files, report) =>
  readMarkdownFile(found, { folder: `guides/${id}`, files, report }, (file, prose) =>
    readGuide(id, file, prose),
  );
export const readModuleFile: MarkdownReader<Module> = (found, id, files, report) =>
  readMarkdownFile(found, { folder: `modules/${id}`, files, report }, (file, prose, document) =>
    readModule(id, file, withTexts(prose, document)),
  );

type MarkdownReader<T> = (
  found: FileFound,
  id: string,
  files: ReadonlyMap<string, Uint8Array>,
  report: Report,
) => ReadFile<T>;

/** Where a Markdown file lies, and what lies beside it. */
interface Beside {
  readonly folder: string;
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly report: Report;
}

/**
 * Front matter and prose. Faults of the prose (raw HTML) leave what was read; faults of the front matter do not, and
 * the prose is looked at all the same.
 */
function readMarkdownFile<T>(
  { file, bytes }: FileFound,
  { folder, files, report }: Beside,
  reader: (file: OpenFile, prose: Prose, document: MarkdownDocument) => T,
): ReadFile<T> {
  const source = decode(file, bytes, limits.markdownBytes, report);
  const split = source && splitFrontMatter(source, report);
  if (!split) return {};
  const sheet = readSheet(source, split.matter, report);
  const exists = (name: string): boolean => files.has(`${folder}/${name.replace(/^\.\//, '')}`);
  const read = readProse(source, split.prose, exists, report);
  if (!sheet || !read) return sheet ? { sheet } : {};
  const open = { sheet, report, refused: sheet.faulty };
  return { ...whatIsSound(open, (open) => reader(open, read.prose, read.document)), document: read.document };
}

function whatIsSound<T>(file: OpenFile, reader: (file: OpenFile) => T): ReadFile<T> {
  const value = reader(file);
  return file.refused ? { sheet: file.sheet } : { sheet: file.sheet, value };
}
