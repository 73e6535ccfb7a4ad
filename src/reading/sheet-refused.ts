import { isAlias, isScalar, visit, type Document, type Node, type Pair } from 'yaml';
import type { Report } from './report.ts';
import type { Spot } from './sheet.ts';

/**
 * Reports the parts of YAML that no guide needs and that let a file mean something else than it shows: anchors and
 * aliases, tags, directives, merge keys, keys that are not plain text, names that every object of the language has.
 */
export function reportRefusedYaml(document: Document.Parsed, spot: Spot, report: Report): boolean {
  let refused = false;
  const refuse = (variant: string, from: number, to: number, text: string): void => {
    refused = true;
    report({ code: 'refused-yaml', variant, facts: { text } }, spot(from, to));
  };
  if (document.directives.docStart || document.directives.docEnd) refuse('fence-inside', 0, 3, '---');
  visit(document, {
    Pair: (_, pair) => refuseKey(pair, refuse),
    Node: (_, node) => refuseNode(node, refuse),
  });
  return refused;
}

type Refuse = (variant: string, from: number, to: number, text: string) => void;

function refuseNode(node: Node, refuse: Refuse): void {
  const [from, to] = node.range ?? [0, 1];
  if (isAlias(node)) return refuse('alias', from, to, `*${node.source}`);
  if ('anchor' in node && node.anchor) refuse('anchor', Math.max(0, from - node.anchor.length - 2), from, `&${node.anchor}`);
  if (node.tag?.startsWith('!') || isTagged(node)) refuse('tag', from, to, node.tag!);
}

/** Failsafe gives every node one of three tags of its own; any other was written by the author. */
const ownTags = new Set(['tag:yaml.org,2002:str', 'tag:yaml.org,2002:map', 'tag:yaml.org,2002:seq']);
const isTagged = (node: Node): boolean => node.tag !== undefined && !ownTags.has(node.tag);

function refuseKey(pair: Pair, refuse: Refuse): void {
  const [from, to] = (pair.key as Node | null)?.range ?? [0, 1];
  if (!isScalar(pair.key)) return refuse('key', from, to, '?');
  const key = String(pair.key.value);
  if (key === '<<') return refuse('merge', from, to, key);
  if (key in Object.prototype) refuse('reserved-name', from, to, key);
}
