import { isScalar, visit, type CST, type Document, type Node, type Pair } from 'yaml';
import type { Report } from '../report.ts';
import type { Spot } from './sheet.ts';

/**
 * Reports the parts of YAML that no guide needs and that let a file mean something else than it shows: anchors and
 * aliases, tags, merge keys, keys that are not plain text, names that every object of the language has.
 */
export function reportRefusedYaml(document: Document.Parsed, spot: Spot, report: Report): boolean {
  let refused = false;
  const refuse: Refuse = (variant, from, text) => {
    refused = true;
    report({ code: 'refused-yaml', variant, facts: { text } }, spot(from, from + Math.max(1, text.length)));
  };
  visit(document, {
    Alias: (_, node) => refuse('alias', node.range![0], `*${node.source}`),
    Pair: (_, pair) => refuseKey(pair, refuse),
    Collection: (_, node) => refuseProperties(node.srcToken, refuse),
  });
  return refused;
}

type Refuse = (variant: string, from: number, text: string) => void;

/** Anchors and tags stand in the source between a key or a dash and its value. */
function refuseProperties(token: CST.Token | undefined, refuse: Refuse): void {
  if (!token || !('items' in token)) return;
  for (const { start, sep = [] } of token.items as readonly CST.CollectionItem[]) {
    for (const { type, offset, source } of [...start, ...sep]) {
      if (type === 'anchor' || type === 'tag') refuse(type, offset, source);
    }
  }
}

function refuseKey(pair: Pair, refuse: Refuse): void {
  const [from] = (pair.key as Node | null)?.range ?? [0];
  if (!isScalar(pair.key)) return refuse('key', from, '?');
  const key = String(pair.key.value);
  if (key === '<<') return refuse('merge', from, key);
  if (key in Object.prototype) refuse('reserved-name', from, key);
}
