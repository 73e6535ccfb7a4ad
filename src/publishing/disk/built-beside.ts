import { access, cp, mkdir, rename, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { foreignFiles, manifestName, manifestOf } from './manifest.ts';
import type { Edition, Files } from '../paths/files.ts';

/** Where an edition stands, and what stands beside it while it is replaced. */
export interface Places {
  readonly place: string;
  readonly built: string;
  /** A note that what was built is whole. */
  readonly whole: string;
  readonly old: string;
}

export function placesOf(out: string, edition: Edition): Places {
  return {
    place: join(out, edition),
    built: join(out, `.${edition}.new`),
    whole: join(out, `.${edition}.whole`),
    old: join(out, `.${edition}.old`),
  };
}

/** Builds a folder beside its place, with what others put into the old one, and notes that it is whole. */
export async function build(
  { place, built, whole }: Places,
  files: Files,
  beside: readonly string[],
): Promise<void> {
  for (const [path, bytes] of files) await write(join(built, path), bytes);
  await write(join(built, manifestName), manifestOf({ files: [...files.keys()], beside }));
  for (const path of (await exists(place)) ? await foreignFiles(place) : []) {
    await mkdir(dirname(join(built, path)), { recursive: true });
    await cp(join(place, path), join(built, path), { preserveTimestamps: true, verbatimSymlinks: true });
  }
  await writeFile(whole, '');
}

/** Moves what others put into the old folder after the new one was built; what stands in its place already stays. */
export async function carryLate(old: string, place: string): Promise<void> {
  for (const path of await foreignFiles(old)) {
    if (await exists(join(place, path))) continue;
    await mkdir(dirname(join(place, path)), { recursive: true });
    await rename(join(old, path), join(place, path));
  }
}

export async function write(path: string, bytes: Uint8Array): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, bytes);
}

export async function exists(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}
