import { pathToFileURL } from 'node:url';
import { beforeAll } from 'vitest';
import { demoSite } from '../publishing/demo-site.ts';
import { onceARun } from './once-a-run.ts';

/** The demo site on the disk, published once in a run of the tests. */
export function publishedDemo(): {
  readonly address: (path: string) => string;
  readonly folder: () => string;
} {
  let folder = '';
  beforeAll(async () => {
    folder = await onceARun('demo', () => demoSite());
  }, 240_000);
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
