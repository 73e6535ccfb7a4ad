import { link, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Diagnostic } from '../../core/diagnostic.ts';

export interface Lock {
  readonly release: () => Promise<void>;
}

/** Holds the number of the process that is publishing into the folder. */
export const lockName = '.publishing';

/** Keeps a folder for one publish at a time. A lock whose owner is gone is taken over. */
export async function lockFolder(
  folder: string,
): Promise<Lock | { readonly refused: readonly Diagnostic[] }> {
  const path = join(folder, lockName);
  for (;;) {
    if (await take(path)) return { release: () => rm(path, { force: true }) };
    const owner = await readFile(path, 'utf8').catch(() => undefined);
    if (owner !== undefined && isRunning(Number(owner))) {
      return { refused: [{ code: 'publish-under-way', severity: 'error', places: [], facts: { folder } }] };
    }
    if (owner !== undefined) await breakLock(path, owner);
  }
}

/** Tells apart what one process tries at the same time. */
let tries = 0;

/** A lock appears whole, with its owner in it, or not at all: written aside, then linked into place. */
async function take(path: string): Promise<boolean> {
  const aside = `${path}.${process.pid}.${tries++}`;
  await rm(aside, { force: true });
  await writeFile(aside, String(process.pid));
  const isTaken = await link(aside, path).then(
    () => true,
    (trouble: NodeJS.ErrnoException) => {
      if (trouble.code === 'EEXIST') return false;
      throw trouble;
    },
  );
  await rm(aside, { force: true });
  return isTaken;
}

/** Moves a dead lock away; puts it back where it turns out that somebody else has meanwhile taken it over. */
async function breakLock(path: string, deadOwner: string): Promise<void> {
  const aside = `${path}.broken.${process.pid}.${tries++}`;
  const isMoved = await rename(path, aside).then(
    () => true,
    () => false,
  );
  if (!isMoved) return;
  if ((await readFile(aside, 'utf8')) !== deadOwner) await link(aside, path).catch(() => undefined);
  await rm(aside, { force: true });
}

function isRunning(pid: number): boolean {
  if (!Number.isInteger(pid) || pid <= 0) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (trouble) {
    return (trouble as NodeJS.ErrnoException).code === 'EPERM';
  }
}
