import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Diagnostic } from '../core/diagnostic.ts';

export interface Lock {
  readonly release: () => Promise<void>;
}

/** Keeps a folder for one publish at a time. A lock whose owner is gone is taken over. */
export async function lockFolder(
  folder: string,
): Promise<Lock | { readonly refused: readonly Diagnostic[] }> {
  const path = join(folder, '.publishing');
  const release = () => rm(path, { force: true });
  if (await take(path)) return { release };
  const owner = Number(await readFile(path, 'utf8').catch(() => ''));
  if (isRunning(owner)) {
    return { refused: [{ code: 'publish-under-way', severity: 'error', places: [], facts: { folder } }] };
  }
  await release();
  return (await take(path)) ? { release } : lockFolder(folder);
}

async function take(path: string): Promise<boolean> {
  try {
    await writeFile(path, String(process.pid), { flag: 'wx' });
    return true;
  } catch (trouble) {
    if ((trouble as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw trouble;
  }
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
