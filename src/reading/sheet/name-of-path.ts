import {
  entryNouns,
  keyNouns,
  keysOfNames,
  recordNouns,
  silentKeys,
} from '../../words/diagnostics/names-of-keys.ts';
import type { Path, Raw, Sheet } from './sheet.ts';

/**
 * How a sentence names the value at a path: the last key, and the chain of records round it.
 *
 *     steps/2/wait           ->  key "wait", what "wait of step pour"
 *     steps/2/watched        ->  key "watched", what "key “watched” of step pour"
 *     materials/0/amount     ->  key "amount", what "amount of material gel"
 *     packs/0/price          ->  key "price", what "price of pack 1 of Label" (a material’s and a tool’s own name)
 */
export function nameOfPath(path: Path, sheet: Sheet): PathName {
  const last = path.at(-1);
  const key = String(path.findLast((step) => typeof step === 'string') ?? '');
  const what = [...nameOfFile(sheet), ...chain(path, sheet.values)].reverse().join(' of ');
  const put = typeof last === 'string' ? `${last}: ` : '';
  return { key, what, put, inWhat: what === '' ? '' : ` in ${what}` };
}

export interface PathName {
  readonly key: string;
  readonly what: string;
  /** What stands before the value in its line: `wait: `; nothing in a list. */
  readonly put: string;
  /** " in step pour"; empty at the top of a file. */
  readonly inWhat: string;
}

function nameOfFile({ source, values }: Sheet): readonly string[] {
  const name = values['name'];
  return /^(materials|tools)\//.test(source.file) && typeof name === 'string' && name !== '' ? [name] : [];
}

/** From the top down. The key of a list is left to its record, and a silent one to the key below it. */
function chain(path: Path, top: Raw): string[] {
  const names: string[] = [];
  let value: Raw | undefined = top;
  for (const [index, step] of path.entries()) {
    value = below(value, step);
    const [above, next] = [path[index - 1], path[index + 1]];
    const leaves = typeof next === 'number' || (next !== undefined && silentKeys.includes(String(step)));
    if (typeof step === 'number') names.push(recordName(String(above), value, step));
    else if (!leaves) names.push(spokenKey(step, above));
  }
  return names;
}

function spokenKey(key: string, parent: string | number | undefined): string {
  return keysOfNames.includes(String(parent)) ? key : (keyNouns[key] ?? `key “${key}”`);
}

function recordName(list: string, record: Raw | undefined, index: number): string {
  const noun = recordNouns[list];
  if (!noun) return entryNouns[list] ?? `entry ${index + 1} of ${list}`;
  const called = ['id', 'use', 'material', 'version', 'at'].map((key) => below(record, key));
  const name =
    called.find((text) => typeof text === 'string' && text !== '') ??
    (typeof record === 'string' ? record : undefined);
  return `${noun} ${typeof name === 'string' ? name : index + 1}`;
}

function below(value: Raw | undefined, step: string | number): Raw | undefined {
  if (typeof value !== 'object') return undefined;
  return Object.hasOwn(value, step) ? (value as Readonly<Record<string | number, Raw>>)[step] : undefined;
}
