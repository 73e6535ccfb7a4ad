import { access, cp, mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Diagnostic } from '../core/diagnostic.ts';
import { foreignFiles, isOurs, manifestName, manifestOf } from './manifest.ts';
import { lockFolder } from './lock.ts';
import type { Edition, Files } from './site.ts';

/** What publishing wrote. */
export interface Published {
  readonly editions: readonly {
    readonly edition: Edition;
    readonly folder: string;
    readonly files: number;
  }[];
}

/**
 * Writes a site into a folder so that a reader always finds the whole old one or the whole new one.
 *
 * Each edition is built beside its place, then swapped by two renames:
 *
 *     .trainees.new  built: the new files, and foreign files of the old folder carried over
 *     .trainees.whole  a note that it is whole: from here on the next publish finishes, before it undoes
 *     trainees -> .trainees.old,  .trainees.new -> trainees
 *     .trainees.old and the note go
 *
 * Killed at any moment, the next publish finishes or undoes what is half done. A disk that is full leaves the old site
 * byte for byte.
 *
 * @param out    The folder; made where it is missing.
 * @param files  By path: `trainees/index.html`. Files outside an edition stand at the top of `out`.
 * @returns What was written; or why nothing was: a folder that publish did not make, or another publish under way.
 */
export async function writeSite(
  out: string,
  files: Files,
  editions: readonly Edition[],
): Promise<Published | { readonly refused: readonly Diagnostic[] }> {
  await mkdir(out, { recursive: true });
  const lock = await lockFolder(out);
  if ('refused' in lock) return lock;
  try {
    for (const edition of editions) await settle(out, edition);
    const notOurs = await foreignEditions(out, editions);
    if (notOurs.length > 0) return { refused: notOurs };
    for (const edition of editions) await build(out, edition, filesOf(files, edition));
    for (const edition of editions) await swap(out, edition);
    await writeTop(out, files, editions);
  } finally {
    await lock.release();
  }
  return {
    editions: editions.map((edition) => ({
      edition,
      folder: join(out, edition),
      files: filesOf(files, edition).size,
    })),
  };
}

const besideOf = (out: string, edition: Edition) => ({
  place: join(out, edition),
  new: join(out, `.${edition}.new`),
  whole: join(out, `.${edition}.whole`),
  old: join(out, `.${edition}.old`),
});

function filesOf(files: Files, edition: Edition): Files {
  const start = `${edition}/`;
  const own = [...files].filter(([path]) => path.startsWith(start));
  return new Map(own.map(([path, bytes]) => [path.slice(start.length), bytes]));
}

/** Finishes what an earlier publish had built whole, and clears away what it had not. */
async function settle(out: string, edition: Edition): Promise<void> {
  const beside = besideOf(out, edition);
  if ((await exists(beside.whole)) && (await exists(beside.new))) return swap(out, edition);
  if (!(await exists(beside.place)) && (await exists(beside.old))) await rename(beside.old, beside.place);
  for (const path of [beside.new, beside.old, beside.whole]) await rm(path, { recursive: true, force: true });
}

async function foreignEditions(out: string, editions: readonly Edition[]): Promise<Diagnostic[]> {
  const refused: Diagnostic[] = [];
  for (const edition of editions) {
    const folder = join(out, edition);
    if (await isOurs(folder)) continue;
    refused.push({ code: 'folder-not-ours', severity: 'error', places: [], facts: { folder } });
  }
  return refused;
}

async function build(out: string, edition: Edition, files: Files): Promise<void> {
  const beside = besideOf(out, edition);
  try {
    for (const [path, bytes] of files) await write(join(beside.new, path), bytes);
    await write(join(beside.new, manifestName), manifestOf(files));
    for (const path of await foreignFiles(beside.place, files)) {
      await mkdir(dirname(join(beside.new, path)), { recursive: true });
      await cp(join(beside.place, path), join(beside.new, path), { preserveTimestamps: true });
    }
    await writeFile(beside.whole, '');
  } catch (trouble) {
    await rm(beside.new, { recursive: true, force: true });
    throw trouble;
  }
}

async function swap(out: string, edition: Edition): Promise<void> {
  const beside = besideOf(out, edition);
  if (await exists(beside.place)) {
    await rm(beside.old, { recursive: true, force: true });
    await rename(beside.place, beside.old);
  }
  await rename(beside.new, beside.place);
  await rm(beside.whole, { force: true });
  await rm(beside.old, { recursive: true, force: true });
}

/** The page that leads to the editions: written beside its place and renamed, so that it is never half there. */
async function writeTop(out: string, files: Files, editions: readonly Edition[]): Promise<void> {
  const top = [...files].filter(([path]) => !editions.some((edition) => path.startsWith(`${edition}/`)));
  for (const [path, bytes] of top) {
    await write(join(out, `.${path}.new`), bytes);
    await rename(join(out, `.${path}.new`), join(out, path));
  }
}

async function write(path: string, bytes: Uint8Array): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, bytes);
}

async function exists(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}
