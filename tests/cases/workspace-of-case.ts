import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { runChecks } from '../../src/checks/checks.ts';
import type { Diagnostic } from '../../src/core/diagnostic.ts';
import type { IsoDate } from '../../src/core/model/values.ts';
import { read } from '../../src/reading/read.ts';
import { inReadingOrder } from '../../src/reading/report.ts';

export const casesFolder = new URL('.', import.meta.url).pathname;

/** A stretch of one file and what stands there instead. `find` has to be there exactly once. */
export interface Change {
  readonly file: string;
  readonly find: string;
  readonly put: string;
}

/** What `case.json` says. */
export interface CaseText {
  /** What makes the base wrong. */
  readonly change?: readonly Change[];
  /** Files of the base that are not there. */
  readonly without?: readonly string[];
  /** The text under Write, pasted: what makes it right again. */
  readonly remedy?: readonly Change[];
  /** The day that counts as today: 2026-11-25 where left out. */
  readonly today?: IsoDate;
}

export interface Case extends CaseText {
  /** The folder's name: the code of what is wrong. */
  readonly code: string;
  readonly name: string;
  readonly folder: string;
}

/** All cases, in order: `tests/cases/<code>/<name>/case.json`. */
export function allCases(): readonly Case[] {
  const codes = foldersIn(casesFolder).filter((name) => name !== 'base');
  return codes.flatMap((code) =>
    foldersIn(join(casesFolder, code)).map((name) => {
      const folder = join(casesFolder, code, name);
      return {
        ...(JSON.parse(readFileSync(join(folder, 'case.json'), 'utf8')) as CaseText),
        code,
        name,
        folder,
      };
    }),
  );
}

type Files = ReadonlyMap<string, Uint8Array>;

/** The base with a case's own files over it, its changes made, and, if asked for, its remedy pasted. */
export function filesOf(one: Case, mended = false): Files {
  const files = new Map([...filesBelow(join(casesFolder, 'base')), ...filesBelow(join(one.folder, 'files'))]);
  for (const file of one.without ?? []) files.delete(file);
  for (const change of [...(one.change ?? []), ...(mended ? (one.remedy ?? []) : [])]) make(change, files);
  return files;
}

function make({ file, find, put }: Change, files: Map<string, Uint8Array>): void {
  const text = new TextDecoder().decode(files.get(file) ?? new Uint8Array());
  const pieces = text.split(find);
  if (pieces.length !== 2)
    throw new Error(`“${find}” stands ${pieces.length - 1} times in ${file}, not once`);
  files.set(file, new TextEncoder().encode(pieces.join(put)));
}

function filesBelow(folder: string): Map<string, Uint8Array> {
  if (!existsSync(folder)) return new Map();
  const found = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) =>
    entry.isFile(),
  );
  return new Map(
    found.map((entry) => {
      const path = join(entry.parentPath, entry.name);
      return [path.slice(folder.length + 1), new Uint8Array(readFileSync(path))] as const;
    }),
  );
}

function foldersIn(folder: string): readonly string[] {
  const entries = readdirSync(folder, { withFileTypes: true });
  return entries.flatMap((entry) => (entry.isDirectory() ? [entry.name] : [])).sort();
}

/** What reading and checks say of some files, by file and line. */
export function findingsOf(files: Files, today: IsoDate = '2026-11-25'): readonly Diagnostic[] {
  const { workspace, origins, unread, files: beside, diagnostics } = read(files);
  const checked = workspace ? runChecks({ workspace, origins, unread, files: beside, today }) : [];
  return inReadingOrder([...diagnostics, ...checked]);
}
