import type { Path, Raw, Sheet } from './sheet.ts';

/** What to call a record of each list. */
const nouns: Readonly<Record<string, string>> = {
  cautions: 'caution',
  checks: 'check',
  history: 'history entry',
  instead: 'substitute',
  keeps: 'way of keeping',
  levels: 'level',
  materials: 'material',
  mixes: 'mix',
  of: 'ingredient',
  packs: 'pack',
  parts: 'part',
  patterns: 'pattern',
  pieces: 'piece',
  renew: 'renewal',
  steps: 'step',
  tools: 'tool',
  uses: 'use',
};

/**
 * How a sentence names the value at a path: the last key, and the chain of records round it.
 *
 *     steps/2/wait           ->  key "wait", what "wait of step pour"
 *     materials/0/amount     ->  key "amount", what "amount of material gel"
 *     packs/0/price          ->  key "price", what "price of pack 1"
 */
export function nameOfPath(path: Path, sheet: Sheet): { readonly key: string; readonly what: string } {
  const key = String(path.findLast((step) => typeof step === 'string') ?? '');
  return { key, what: chain(path, sheet.values).reverse().join(' of ') };
}

function chain(path: Path, top: Raw): string[] {
  const names: string[] = [];
  let value: Raw | undefined = top;
  for (const [index, step] of path.entries()) {
    value = below(value, step);
    const list = path[index - 1];
    if (typeof step === 'string') names.push(step);
    else names.splice(-1, 1, recordName(String(list), value, step));
  }
  return names;
}

function recordName(list: string, record: Raw | undefined, index: number): string {
  const noun = nouns[list];
  if (!noun) return list;
  const called = ['id', 'use', 'material', 'version', 'at'].map((key) => below(record, key));
  const name = called.find((text) => typeof text === 'string' && text !== '') ?? (typeof record === 'string' ? record : undefined);
  return `${noun} ${typeof name === 'string' ? name : index + 1}`;
}

function below(value: Raw | undefined, step: string | number): Raw | undefined {
  if (typeof value !== 'object') return undefined;
  return Object.hasOwn(value, step) ? (value as Readonly<Record<string | number, Raw>>)[step] : undefined;
}
