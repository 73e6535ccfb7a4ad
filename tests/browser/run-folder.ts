import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** A folder that all suites of one run share; it goes when the run ends. */
    runFolder: string;
  }
}

/** Gives each run of the tests a folder of its own, for what is made once and looked at by many suites. */
export default function runFolder({ provide }: TestProject): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'benchwright-run-'));
  provide('runFolder', folder);
  return () => rmSync(folder, { recursive: true, force: true });
}
