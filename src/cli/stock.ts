import { readFile } from 'node:fs/promises';
import { basename, resolve } from 'node:path';
import type { Diagnostic } from '../core/diagnostic.ts';
import type { Workspace } from '../core/model/workspace.ts';
import { type StockRead, readStock } from '../reading/stock.ts';
import { type Fault, fault } from './fault.ts';
import type { Values } from './options.ts';
import type { World } from './world.ts';

/** What is at hand by the stock file that a call names, nothing where it names none; or why the file cannot be used. */
export async function stockOf(
  { stock: file }: Values,
  workspace: Workspace,
  world: World,
): Promise<StockRead | { readonly refused: readonly Diagnostic[] } | { readonly fault: Fault }> {
  if (file === undefined) return { stock: {}, finished: [] };
  const bytes = await readFile(resolve(world.folder, file)).catch(() => undefined);
  return bytes ? readStock(basename(file), bytes, workspace) : { fault: fault('no-such-file', { file }) };
}
