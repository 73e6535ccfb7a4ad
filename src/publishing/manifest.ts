import { readFile, readdir } from 'node:fs/promises';
import { join, sep } from 'node:path';
import type { Files } from './site.ts';

/** The list of the files that publish wrote into an edition's folder: what it lists is ours to replace. */
export const manifestName = 'published-files.json';

export function manifestOf(files: Files): Uint8Array {
  const list = { madeBy: 'benchwright', files: [...files.keys()].sort() };
  return new TextEncoder().encode(`${JSON.stringify(list, null, 1)}\n`);
}

/** Whether publish may replace a folder: it made it, or there is nothing in it. */
export async function isOurs(folder: string): Promise<boolean> {
  const names = await readdir(folder).catch((trouble: NodeJS.ErrnoException) => {
    if (trouble.code === 'ENOENT') return [];
    throw trouble;
  });
  return names.length === 0 || (await listed(folder)) !== undefined;
}

/** Files in the folder that neither its manifest lists nor the new site brings: to be carried over. */
export async function foreignFiles(folder: string, coming: Files): Promise<readonly string[]> {
  const ours = new Set([...((await listed(folder)) ?? []), ...coming.keys(), manifestName]);
  const there = await readdir(folder, { recursive: true, withFileTypes: true }).catch(() => []);
  return there
    .filter((entry) => !entry.isDirectory())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .split(sep)
        .join('/'),
    )
    .filter((path) => !ours.has(path))
    .sort();
}

async function listed(folder: string): Promise<readonly string[] | undefined> {
  const text = await readFile(join(folder, manifestName), 'utf8').catch(() => undefined);
  if (text === undefined) return undefined;
  try {
    const { madeBy, files } = JSON.parse(text) as { madeBy?: unknown; files?: unknown };
    return madeBy === 'benchwright' && Array.isArray(files) ? files.map(String) : undefined;
  } catch {
    return undefined;
  }
}
