import { existsSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import type { Call } from './arguments.ts';
import type { Fault } from './fault.ts';
import { fault } from './fault.ts';
import type { World } from './world.ts';

/** The folder of the workspace, or why there is none. */
export type FolderFound = { readonly folder: string } | { readonly faults: readonly Fault[] };

/**
 * The workspace that a call names by `--workspace`, or by its first word where `takesWord`; else the nearest one
 * upwards from the current folder.
 */
export function findWorkspace(
  { command, values, words }: Call,
  world: World,
  { takesWord }: { readonly takesWord: boolean },
): FolderFound {
  const [word, ...more] = takesWord ? words : [];
  if (more.length > 0)
    return { faults: more.map((extra) => fault('too-many-words', { command, word: extra })) };
  if (word !== undefined && values.workspace !== undefined) {
    return { faults: [fault('workspace-twice', { first: word, second: values.workspace })] };
  }
  const named = values.workspace ?? word;
  return named === undefined ? nearestUpwards(world.folder) : namedFolder(named, world);
}

function namedFolder(named: string, world: World): FolderFound {
  const folder = resolve(world.folder, named);
  return isWorkspace(folder) ? { folder } : { faults: [fault('no-workspace-there', { folder: named })] };
}

function nearestUpwards(from: string): FolderFound {
  for (let folder = from; ; folder = dirname(folder)) {
    if (isWorkspace(folder)) return { folder };
    if (dirname(folder) === folder) return { faults: [fault('no-workspace', { folder: from })] };
  }
}

/** A mistyped `program.yml` counts: reading says what its name has to be. */
function isWorkspace(folder: string): boolean {
  return ['program.yaml', 'program.yml'].some((name) => existsSync(join(folder, name)));
}
