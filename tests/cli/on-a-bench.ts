import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll } from 'vitest';
import { run } from '../../src/cli/run.ts';
import type { ExitStatus } from '../../src/cli/world.ts';

/** An invented workspace that adds up: one guide, of cut cord and glue. */
export const soundWorkspace: Readonly<Record<string, string>> = {
  'program.yaml': `name: Quillmoor Skills Room
currency: GBP
time-zone: Europe/London
stations:
  bench: 2
owned:
  scale: 1
`,
  'materials/cord.yaml': `name: Cotton cord
form: length
packs:
  - holds: 5 m
    price: 3.20 GBP
    priced: 2026-09-14
`,
  'tools/scale.yaml': `name: Kitchen scale
price: 12.00 GBP
priced: 2026-09-14
reads: 1 g
lasts: 1000 uses
`,
  'guides/knot-board/guide.md': `---
title: Knot board
levels:
  - id: plain
    name: Plain
    usual: yes
  - id: wet
    name: Wet
lasts: 20 uses
materials:
  - use: cord
    amount: 600 mm
steps:
  - id: tie-it
    hands-on: 10 min
    set:
      soak:
        plain: 0 min
        wet: 5 min
in-use:
  after: { do: Undo all knots. }
  store: { how: dry }
  dispose: { to: general waste }
electrosurgery: no
---

A board to tie knots on.

## Tie it

Tie [600 mm](material:cord) of cord to the board.
`,
};

const made: string[] = [];
afterAll(() => {
  for (const folder of made) rmSync(folder, { recursive: true, force: true });
});

/** A folder of its own with these files, gone after the tests of the file. */
export function folderWith(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  made.push(folder);
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}

export interface Ran {
  readonly status: ExitStatus;
  readonly out: string;
  readonly err: string;
}

export interface Circumstances {
  readonly folder?: string;
  readonly environment?: Readonly<Record<string, string>>;
  readonly isTerminal?: boolean;
}

/** A call as a shell would make it, on the day 25 November 2026. */
export async function benchwright(
  args: readonly string[],
  { folder = tmpdir(), environment = {}, isTerminal = false }: Circumstances = {},
): Promise<Ran> {
  const written = { out: '', err: '' };
  const output = (name: 'out' | 'err') => ({
    write: (text: string) => void (written[name] += text),
    isTerminal,
  });
  const status = await run({
    args,
    folder,
    environment,
    systemDay: () => '2026-11-25',
    out: output('out'),
    err: output('err'),
  });
  return { status, ...written };
}
