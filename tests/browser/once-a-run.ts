import { existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { inject } from 'vitest';
import type { Files } from '../../src/publishing/paths/files.ts';
import { writeAll } from './write-all.ts';

/**
 * A folder with these files, made by the first suite of a run that asks for it; the others wait until it is whole.
 *
 * @returns Where it lies. Nothing writes into it: other suites look at it at the same time.
 */
export async function onceARun(name: string, make: () => Promise<Files>): Promise<string> {
  const whole = join(inject('runFolder'), name);
  const begun = `${whole}-begun`;
  while (!existsSync(whole)) {
    if (!isMine(begun)) await pause(100);
    else await fill(begun, make).then(() => renameSync(begun, whole));
  }
  return whole;
}

/** To make a folder is one act, so only one suite does. */
function isMine(folder: string): boolean {
  try {
    mkdirSync(folder);
    return true;
  } catch (trouble) {
    if ((trouble as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw trouble;
  }
}

/** What fails leaves nothing behind, so that the next suite tries, and says itself what is wrong. */
async function fill(folder: string, make: () => Promise<Files>): Promise<void> {
  try {
    writeAll(folder, await make());
  } catch (trouble) {
    rmSync(folder, { recursive: true, force: true });
    throw trouble;
  }
}
