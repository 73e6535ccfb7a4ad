import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll } from 'vitest';
import { demoSite } from '../publishing/demo-site.ts';

/** The demo site in a folder of the disk while a suite runs. */
export function publishedDemo(): {
  readonly address: (path: string) => string;
  readonly folder: () => string;
} {
  let folder = '';
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'benchwright-site-'));
    for (const [path, bytes] of await demoSite(['trainees'])) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), bytes);
    }
  }, 120_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return {
    folder: () => folder,
    address: (path) => `${pathToFileURL(folder).href}/${path}`,
  };
}

/** One page of each kind. */
export const kindsOfPage = {
  door: 'index.html',
  catalogue: 'trainees/index.html',
  guide: 'trainees/guides/needle-block/index.html',
  'another level': 'trainees/guides/needle-block/deep/index.html',
  'draft guide': 'trainees/guides/neck-airway-trainer/index.html',
  'guide that cuts': 'trainees/guides/chest-drain-frame/index.html',
  'bench sheet': 'trainees/guides/needle-block/bench-sheet/index.html',
  'cutting plan': 'trainees/guides/chest-drain-frame/cutting-plan/index.html',
  materials: 'trainees/materials/index.html',
  tools: 'trainees/tools/index.html',
  safety: 'trainees/safety/index.html',
  search: 'trainees/search/index.html',
  manual: 'trainees/manual/writing-a-guide/index.html',
} as const;
