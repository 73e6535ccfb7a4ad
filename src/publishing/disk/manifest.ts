import { readFile, readdir } from 'node:fs/promises';
import { join, sep } from 'node:path';

/** The list of the files that publish wrote into an edition's folder: what it lists is ours to replace. */
export const manifestName = 'published-files.json';

interface Manifest {
  /** In the edition's folder. */
  readonly files: readonly string[];
  /** At the top of the folder that holds the editions. */
  readonly beside: readonly string[];
}

export function manifestOf({ files, beside }: Manifest): Uint8Array {
  const list = { madeBy: 'benchwright', files: [...files].sort(), beside: [...beside].sort() };
  return new TextEncoder().encode(`${JSON.stringify(list, null, 1)}\n`);
}

/** What publish wrote into an edition's folder, and beside it; undefined where it did not make the folder. */
export async function readManifest(folder: string): Promise<Manifest | undefined> {
  const text = await readFile(join(folder, manifestName), 'utf8').catch(() => 'null');
  try {
    const { madeBy, files, beside } = (JSON.parse(text) ?? {}) as Record<string, unknown>;
    if (madeBy !== 'benchwright' || !Array.isArray(files)) return undefined;
    return { files: files.map(String), beside: Array.isArray(beside) ? beside.map(String) : [] };
  } catch {
    return undefined;
  }
}

/** Whether publish may replace a folder: it made it, or there is none, or nothing is in it. */
export async function isOurs(folder: string): Promise<boolean> {
  const names = await readdir(folder).catch(({ code }: NodeJS.ErrnoException) =>
    code === 'ENOENT' ? [] : ['?'],
  );
  return names.length === 0 || (await readManifest(folder)) !== undefined;
}

/** Files that somebody else put into an edition's folder, by path below it. */
export async function foreignFiles(folder: string): Promise<readonly string[]> {
  const ours = new Set([...((await readManifest(folder))?.files ?? []), manifestName]);
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
