import { Scalar, isScalar, visit, type Document, type Node, type YAMLMap } from 'yaml';
import type { Report } from '../report.ts';
import type { Spot } from './sheet.ts';

/**
 * Reports where YAML would drop or split what the author wrote:
 *
 *     what: needle #18             -> "needle", because ` #` opens a comment
 *     { says: hot, sticky gel }    -> a key "sticky gel" without a value, because a comma parts two keys
 *
 * A comment proper has a blank after its `#`, and stays fine.
 */
export function reportEatenText(
  document: Document.Parsed,
  text: string,
  spot: Spot,
  report: Report,
): boolean {
  let eaten = false;
  visit(document, {
    Scalar: (_, node) => {
      const cut = cutText(node, text);
      if (cut === undefined) return;
      eaten = true;
      report(
        { code: 'text-cut-short', facts: { kept: String(node.value), text: cut } },
        spot(node.range![0], node.range![0] + cut.length),
      );
    },
    Map: (_, map) => {
      for (const index of nakedKeys(map)) {
        eaten = true;
        reportNaked(map, index, text, spot, report);
      }
    },
  });
  return eaten;
}

/** The whole of what was written, where a plain value ends at a `#` that touches the next character. */
function cutText(node: Scalar, text: string): string | undefined {
  if (node.type !== Scalar.PLAIN || !node.range) return undefined;
  const rest = /^[ \t]+#[^\s#][^\n]*/.exec(text.slice(node.range[1], node.range[1] + 200));
  return rest ? text.slice(node.range[0], node.range[1] + rest[0].length).trimEnd() : undefined;
}

/** Pairs in braces that have a key and no colon. */
function nakedKeys(map: YAMLMap): readonly number[] {
  return map.items.flatMap((pair, index) => (pair.value === null ? [index] : []));
}

function reportNaked(map: YAMLMap, index: number, text: string, spot: Spot, report: Report): void {
  const pair = map.items[index]!;
  const [from, to] = rangeOf(pair.key);
  const before = map.items[index - 1];
  const naked = text.slice(from, to);
  if (!before || !isScalar(before.value) || !isScalar(before.key)) {
    report({ code: 'key-without-value', facts: { text: naked } }, spot(from, to));
    return;
  }
  const key = String(before.key.value);
  const value = String(before.value.value);
  report({ code: 'key-without-value', variant: 'comma', facts: { text: naked, key, value } }, spot(from, to));
}

function rangeOf(key: unknown): readonly [number, number] {
  const range = (key as Node | null)?.range;
  return range ? [range[0], range[1]] : [0, 1];
}
