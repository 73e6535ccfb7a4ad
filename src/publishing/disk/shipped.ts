import { readFile, readdir } from 'node:fs/promises';
import { dirname, join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Bug } from '../../core/diagnostic.ts';
import type { Files } from '../paths/files.ts';

/** What every site carries, from beside the program: `styles/site.css`, `scripts/search.js`, `fonts/…`. Made by the build. */
export async function shippedFiles(): Promise<Files> {
  return filesIn(join(await packageFolder(), 'dist/shipped'));
}

/** The pages of the manual, by file name. */
export async function manualFiles(): Promise<Files> {
  return filesIn(join(await packageFolder(), 'dist/manual'));
}

/**
 * The folder of this package: the nearest one upwards that has its `package.json`.
 *
 * @throws {Bug} Where there is none: the program was taken out of its package.
 */
async function packageFolder(folder = dirname(fileURLToPath(import.meta.url))): Promise<string> {
  const text = await readFile(join(folder, 'package.json'), 'utf8').catch(() => '{}');
  if ((JSON.parse(text) as { name?: string }).name === 'benchwright') return folder;
  if (folder === dirname(folder)) throw new Bug('the program stands in no package of its own', { folder });
  return packageFolder(dirname(folder));
}

async function filesIn(folder: string): Promise<Files> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const paths = entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .sort();
  const files = await Promise.all(
    paths.map(async (path) => [path.split(sep).join('/'), await readFile(join(folder, path))] as const),
  );
  return new Map(files);
}
