import { mkdir, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Diagnostic } from '../../core/diagnostic.ts';
import { build, carryLate, exists, placesOf, write } from './built-beside.ts';
import { lockFolder } from './lock.ts';
import { foreignFiles, isOurs, readManifest } from './manifest.ts';
import { type Edition, type Files, editions as allEditions } from '../paths/files.ts';

/** What publishing wrote. */
export interface Published {
  readonly editions: readonly {
    readonly edition: Edition;
    readonly folder: string;
    readonly files: number;
  }[];
}
interface Refused {
  readonly refused: readonly Diagnostic[];
}

/**
 * Writes a site into a folder so that a reader always finds the whole old one or the whole new one.
 *
 * Each edition is built beside its place, then swapped by two renames:
 *
 *     .trainees.new      built: the new files, and a copy of what others put into the old folder
 *     .trainees.whole    a note that it is whole
 *     trainees -> .trainees.old,  .trainees.new -> trainees
 *     .trainees.old      goes, and the note with it
 *
 * Killed at any moment, the next publish finishes or undoes what is half done. A disk that is full leaves the old site
 * byte for byte.
 *
 * @param out    The folder; made where it is missing.
 * @param files  By path: `trainees/index.html`. Files outside an edition stand at the top of `out`.
 * @returns What was written; or why nothing was: a folder that publish did not make, a file of somebody else in the
 *          way, another publish under way.
 */
export async function writeSite(
  out: string,
  files: Files,
  editions: readonly Edition[],
): Promise<Published | Refused> {
  await mkdir(out, { recursive: true });
  const lock = await lockFolder(out);
  if ('refused' in lock) return lock;
  try {
    for (const edition of allEditions) await settle(out, edition);
    const refused = await inTheWay(out, files, editions);
    return refused.length > 0 ? { refused } : await replace(out, files, editions);
  } finally {
    await lock.release();
  }
}

async function replace(out: string, files: Files, editions: readonly Edition[]): Promise<Published> {
  const top = filesAtTop(files);
  try {
    for (const edition of editions) {
      await build(placesOf(out, edition), filesOf(files, edition), [...top.keys()]);
    }
    for (const edition of editions) await swap(out, edition);
    await writeTop(out, top, editions);
  } catch (trouble) {
    for (const edition of editions) await settle(out, edition).catch(() => undefined);
    throw trouble;
  }
  return {
    editions: editions.map((edition) => ({
      edition,
      folder: join(out, edition),
      files: filesOf(files, edition).size,
    })),
  };
}

function filesOf(files: Files, edition: Edition): Files {
  const start = `${edition}/`;
  const own = [...files].filter(([path]) => path.startsWith(start));
  return new Map(own.map(([path, bytes]) => [path.slice(start.length), bytes]));
}

function filesAtTop(files: Files): Files {
  return new Map(
    [...files].filter(([path]) => !allEditions.some((edition) => path.startsWith(`${edition}/`))),
  );
}

/** Clears up after a publish that was killed: finishes where the old folder has gone from its place, else undoes. */
async function settle(out: string, edition: Edition): Promise<void> {
  const { place, built, whole, old } = placesOf(out, edition);
  if (!(await exists(place))) {
    if ((await exists(whole)) && (await exists(built))) await rename(built, place);
    else if (await exists(old)) await rename(old, place);
  }
  if (await exists(old)) await carryLate(old, place);
  for (const path of [built, whole, old]) await rm(path, { recursive: true, force: true });
}

async function swap(out: string, edition: Edition): Promise<void> {
  const { place, built, whole, old } = placesOf(out, edition);
  if (await exists(place)) await rename(place, old);
  await rename(built, place);
  if (await exists(old)) await carryLate(old, place);
  await rm(old, { recursive: true, force: true });
  await rm(whole, { force: true });
}

/** What must not be replaced: editions that publish did not make, and files of others where new ones would stand. */
async function inTheWay(
  out: string,
  files: Files,
  editions: readonly Edition[],
): Promise<readonly Diagnostic[]> {
  const refused: Diagnostic[] = [];
  for (const edition of editions) {
    const folder = join(out, edition);
    if (!(await isOurs(folder))) refused.push(refusal('folder-not-ours', { folder }));
    const coming = filesOf(files, edition);
    const foreign = (await exists(folder)) ? await foreignFiles(folder) : [];
    const met = foreign.filter((path) => coming.has(path)).map((path) => join(folder, path));
    refused.push(...met.map((file) => refusal('foreign-file-in-the-way', { file })));
  }
  if (refused.some(({ code }) => code === 'folder-not-ours'))
    return refused.filter(({ code }) => code === 'folder-not-ours');
  return [...refused, ...(await topInTheWay(out, filesAtTop(files)))];
}

async function topInTheWay(out: string, top: Files): Promise<readonly Diagnostic[]> {
  const manifests = await Promise.all(allEditions.map((edition) => readManifest(join(out, edition))));
  const ours = new Set(manifests.flatMap((manifest) => manifest?.beside ?? []));
  const foreign = [];
  for (const path of top.keys()) if (!ours.has(path) && (await exists(join(out, path)))) foreign.push(path);
  return foreign.map((path) => refusal('foreign-file-in-the-way', { file: join(out, path) }));
}

function refusal(code: string, facts: Diagnostic['facts']): Diagnostic {
  return { code, severity: 'error', places: [], facts };
}

/**
 * The page that leads to the editions: written beside its place and renamed, so that it is never half there. Where an
 * edition that was not published now stands there too, the page already leads to both and is left alone.
 */
async function writeTop(out: string, top: Files, editions: readonly Edition[]): Promise<void> {
  const others = allEditions.filter((edition) => !editions.includes(edition));
  const isComplete = (await Promise.all(others.map((edition) => readManifest(join(out, edition))))).some(
    Boolean,
  );
  for (const [path, bytes] of top) {
    if (isComplete && (await exists(join(out, path)))) continue;
    const built = join(out, `.${path}.new`);
    // What a killed publish left there goes; were it a link, writing would follow it out of the folder.
    await rm(built, { force: true });
    await write(built, bytes);
    await rename(built, join(out, path));
  }
}
