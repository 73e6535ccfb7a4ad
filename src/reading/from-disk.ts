import { lstat, readFile, readdir, realpath } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import type { Diagnostic } from '../core/diagnostic.ts';
import { limits } from './limits.ts';
import { read, type ReadWorkspace } from './read.ts';
import { makeReport, type Report } from './report.ts';
import { wholeFile } from './text/source.ts';

/** The files of a workspace folder, and what the disk would not give. */
export interface LoadedFolder {
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly refused: readonly Diagnostic[];
}

/** A workspace read from its folder: the one place of reading that touches the disk. */
export async function readFolder(folder: string): Promise<ReadWorkspace> {
  const { files, refused } = await loadFolder(folder);
  return read(files, refused);
}

/**
 * The bytes of `program.yaml`, `materials/`, `tools/`, `guides/` and `modules/` of a folder, by path below it with
 * forward slashes. Names that begin with a dot are passed over. A link is followed only to a regular file inside the folder.
 */
export async function loadFolder(folder: string): Promise<LoadedFolder> {
  const { report, found } = makeReport();
  const files = new Map<string, Uint8Array>();
  const root = await realpath(folder).catch(() => undefined);
  if (root === undefined)
    report({ code: 'no-program', variant: 'no-folder', facts: { folder } }, wholeFile('program.yaml'));
  else for (const file of await filesOf(root, report)) await load(root, file, files, report);
  return { files, refused: found };
}

/** The paths of a workspace's files, in order; refused where there are more than anybody has. */
async function filesOf(root: string, report: Report): Promise<readonly string[]> {
  const found: string[] = [];
  const program = ['program.yaml', 'program.yml'];
  found.push(...(await namesIn(root)).filter((name) => program.includes(name)));
  for (const name of ['guides', 'materials', 'modules', 'tools']) await collect(root, name, 0, found);
  if (found.length > limits.files)
    report({ code: 'too-many-files', facts: { most: String(limits.files) } }, wholeFile('program.yaml'));
  return found.slice(0, limits.files);
}

async function collect(root: string, path: string, depth: number, found: string[]): Promise<void> {
  if (depth > limits.folders || found.length > limits.files) return;
  for (const name of (await namesIn(join(root, path))).filter((one) => !one.startsWith('.'))) {
    const below = `${path}/${name}`;
    const stat = await lstat(join(root, below)).catch(() => undefined);
    if (stat?.isDirectory()) await collect(root, below, depth + 1, found);
    else if (stat) found.push(below);
  }
}

/** Sorted by code unit, whatever order the disk has; empty where there is no such folder. */
async function namesIn(path: string): Promise<readonly string[]> {
  return (await readdir(path).catch(() => [])).sort((a, b) => (a < b ? -1 : 1));
}

async function load(
  root: string,
  file: string,
  files: Map<string, Uint8Array>,
  report: Report,
): Promise<void> {
  const real = await realpath(join(root, file)).catch(() => undefined);
  const trouble = real === undefined ? 'unreadable' : await troubleWith(root, real);
  const bytes = trouble || real === undefined ? undefined : await readFile(real).catch(() => undefined);
  if (bytes) files.set(file, bytes);
  else
    report(
      {
        code: 'file-refused',
        variant: trouble ?? 'unreadable',
        facts: { file, most: `${limits.fileBytes / 1_000_000} MB` },
      },
      wholeFile(file),
    );
}

/** Why a real path is not to be read: outside the workspace, no regular file, too large. */
async function troubleWith(root: string, real: string): Promise<string | undefined> {
  const inside = relative(root, real);
  if (inside.startsWith(`..${sep}`) || inside === '..' || join(root, inside) !== real) return 'outside';
  const stat = await lstat(real).catch(() => undefined);
  if (!stat?.isFile()) return 'not-a-file';
  return stat.size > limits.fileBytes ? 'too-large' : undefined;
}
