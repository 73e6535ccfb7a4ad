import { isMap, isScalar, isSeq, type Node, type Pair } from 'yaml';
import type { Raw, RawMap } from './sheet.ts';

/** From one offset up to another. */
export type Span = readonly [from: number, to: number];

/** Where a value stands, and the key that it belongs to; an item of a list has none. */
export interface Spans {
  readonly value: Span;
  readonly key?: Span;
}

/**
 * A YAML tree as plain values, with the spans of each under its path, `steps/2/wait`. The tree itself is not kept: of
 * hundreds of guides it would take more room than all else.
 */
export function valuesAndSpans(top: unknown): {
  readonly values: RawMap;
  readonly spans: ReadonlyMap<string, Spans>;
} {
  const spans = new Map<string, Spans>();
  const plain = (node: unknown, path: string): Raw => {
    if (isMap(node)) return Object.fromEntries(node.items.filter(isPaired).map((pair) => entry(pair, path)));
    if (isSeq(node)) return node.items.map((item, index) => noted(item, `${path}${index}`));
    return isScalar(node) ? String(node.value ?? '') : '';
  };
  const entry = (pair: Pair, path: string): readonly [string, Raw] => {
    const key = isScalar(pair.key) ? String(pair.key.value ?? '') : '';
    return [key, noted(pair.value, path + key, pair.key)];
  };
  const noted = (node: unknown, path: string, key?: unknown): Raw => {
    spans.set(path, key === undefined ? { value: spanOf(node) } : { value: spanOf(node), key: spanOf(key) });
    return plain(node, `${path}/`);
  };
  return { values: plain(top, '') as RawMap, spans };
}

/** A key in braces without a value was reported before, and is left out. */
const isPaired = ({ value }: Pair): boolean => value !== null;

function spanOf(node: unknown): Span {
  const range = (node as Node | null)?.range;
  return range ? [range[0], range[1]] : [0, 1];
}
