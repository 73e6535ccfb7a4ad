import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll } from 'vitest';
import { makePlan } from '../../src/core/plan/plan.ts';
import { plannedGuide } from '../../src/publishing/planned/planned-guides.ts';
import { sheetPages } from '../../src/publishing/sheets/sheet-pages.ts';
import { readDemo, shippedNow, today } from '../publishing/demo-site.ts';
import { writeAll } from './write-all.ts';

/** A guide to make sheets of, and how many models where it is not the published batch. */
export interface Asked {
  readonly guide: string;
  readonly wanted?: number;
}

/**
 * The sheets of some guides of the demo in a folder of the disk while a suite runs, with their styles and scripts; the
 * rest of the site is not made.
 *
 * @returns The address of a sheet: `address('knot-board', 'labels')`; of sixty models `address('suture-pad/60', …)`.
 */
export function printedDemo(asked: readonly Asked[]): {
  readonly address: (guide: string, sheet: string) => string;
} {
  let folder = '';
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'benchwright-sheets-'));
    const shipped = await shippedNow();
    for (const one of asked) {
      const below = join(folder, nameOf(one));
      writeAll(below, shipped);
      writeAll(below, await sheetsOf(one));
    }
  }, 120_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return {
    address: (name, sheet) => {
      const guide = name.split('/')[0]!;
      return `${pathToFileURL(folder).href}/${name.replace('/', '-')}/guides/${guide}/${sheet}/index.html`;
    },
  };
}

function nameOf({ guide, wanted }: Asked): string {
  return wanted === undefined ? guide : `${guide}-${wanted}`;
}

async function sheetsOf(asked: Asked): Promise<ReadonlyMap<string, Uint8Array>> {
  const read = await readDemo();
  const workspace = read.workspace!;
  // A quick search: what a sheet looks like does not hang on the best schedule.
  const plan = makePlan(workspace, [asked], { today, effort: '1/50' });
  if ('refused' in plan) throw new Error(JSON.stringify(plan.refused));
  const planned = plannedGuide(workspace.guides[asked.guide]!, plan, [], workspace);
  const site = { program: workspace.program.name, language: workspace.program.locale };
  const pages = sheetPages({ planned, site, workspace, read, paper: 'A4', isFixed: false, query: '' });
  return new Map([...pages].map(([path, bytes]) => [`${planned.folder}/${path}`, bytes]));
}
