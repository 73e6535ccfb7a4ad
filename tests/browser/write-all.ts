import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Files } from '../../src/publishing/paths/files.ts';

/** Writes files into a folder, with the folders that they need. */
export function writeAll(folder: string, files: Files): void {
  for (const [path, bytes] of files) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), bytes);
  }
}
