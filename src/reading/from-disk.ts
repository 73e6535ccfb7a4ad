import { lstat, readFile, readdir, realpath } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import type { Diagnostic } from '../core/diagnostic.ts';
import { limits } from './limits.ts';
import { read, type ReadWorkspace } from './read.ts';
import { type Fault, makeReport, type Report } from './report.ts';
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
 *
 * @param most  So many files and bytes; the rest is refused.
 */
export async function loadFolder(folder: string, most: MostOfAll = limits): Promise<LoadedFolder> {
  const { report, found } = makeReport();
  const files = new Map<string, Uint8Array>();
  const root = await realpath(folder).catch(() => undefined);
  if (root === undefined)
    report({ code: 'no-program', variant: 'no-folder', facts: { folder } }, wholeFile('program.yaml'));
  else await loadAll(root, most, files, report);
  return { files, refused: found };
}

/** How many files and bytes a workspace may have. */
type MostOfAll = Record<'files' | 'allBytes', number>;

async function loadAll(
  root: string,
  most: MostOfAll,
  files: Map<string, Uint8Array>,
  report: Report,
): Promise<void> {
  let left = most.allBytes;
  for (const file of await filesOf(root, most.files, report)) {
    const bytes = await load(root, file, report);
    left -= bytes?.length ?? 0;
    if (left < 0) return report(tooMuch(`${most.allBytes / 1_000_000_000} GB`), wholeFile(file));
    if (bytes) files.set(file, bytes);
  }
}

const tooMuch = (most: string): Fault => ({ code: 'too-many-files', variant: 'bytes', facts: { most } });

/** The paths of a workspace's files, in order; refused where there are more than anybody has. */
async function filesOf(root: string, most: number, report: Report): Promise<readonly string[]> {
  const found: string[] = [];
  const program = ['program.yaml', 'program.yml'];
  found.push(...(await namesIn(root)).filter((name) => program.includes(name)));
  for (const name of ['guides', 'materials', 'modules', 'tools']) await collect(root, name, 0, most, found);
  if (found.length > most)
    report({ code: 'too-many-files', facts: { most: String(most) } }, wholeFile('program.yaml'));
  return found.slice(0, most);
}

async function collect(
  root: string,
  path: string,
  depth: number,
  most: number,
  found: string[],
): Promise<void> {
  if (depth > limits.folders || found.length > most) return;
  for (const name of (await namesIn(join(root, path))).filter((one) => !one.startsWith('.'))) {
    const below = `${path}/${name}`;
    const stat = await lstat(join(root, below)).catch(() => undefined);
    if (stat?.isDirectory()) await collect(root, below, depth + 1, most, found);
    else if (stat) found.push(below);
  }
}

/** Sorted by code unit, whatever order the disk has; empty where there is no such folder. */
async function namesIn(path: string): Promise<readonly string[]> {
  return (await readdir(path).catch(() => [])).sort((a, b) => (a < b ? -1 : 1));
}

async function load(root: string, file: string, report: Report): Promise<Uint8Array | undefined> {
  const real = await realpath(join(root, file)).catch(() => undefined);
  const trouble = real === undefined ? 'unreadable' : await troubleWith(root, real);
  const bytes = trouble || real === undefined ? undefined : await readFile(real).catch(() => undefined);
  const facts = { file, most: `${limits.fileBytes / 1_000_000} MB` };
  if (!bytes) report({ code: 'file-refused', variant: trouble ?? 'unreadable', facts }, wholeFile(file));
  return bytes;
}

/** Why a real path is not to be read: outside the workspace, no regular file, too large. */
async function troubleWith(root: string, real: string): Promise<string | undefined> {
  const inside = relative(root, real);
  if (inside.startsWith(`..${sep}`) || inside === '..' || join(root, inside) !== real) return 'outside';
  const stat = await lstat(real).catch(() => undefined);
  if (!stat?.isFile()) return 'not-a-file';
  return stat.size > limits.fileBytes ? 'too-large' : undefined;
}
