import { limits } from '../limits.ts';
import type { Report } from '../report.ts';
import { placeAt, type Source } from '../text/source.ts';
import type { YamlText } from './sheet.ts';

/**
 * Whether brackets or lists stand too deep in one another, which is reported: counted line by line before the parser,
 * which calls itself for each. Brackets inside quotes count too: nobody writes a hundred that stay open.
 */
export function reportNesting(source: Source, yaml: YamlText, report: Report): boolean {
  let [open, offset] = [0, yaml.offset];
  for (const line of yaml.text.split('\n')) {
    const deepest = deepestBracket(line, open);
    if (Math.max(deepest.most, listsOpened(line)) > limits.nesting) {
      const facts = { most: String(limits.nesting) };
      report({ code: 'too-nested', facts }, placeAt(source, offset, offset + line.length));
      return true;
    }
    open = deepest.left;
    offset += line.length + 1;
  }
  return false;
}

/** How many brackets are open at once in a line at most, and after it, where so many were open before. */
function deepestBracket(line: string, open: number): { readonly most: number; readonly left: number } {
  let [most, left] = [open, open];
  for (const mark of line.match(/[[\]{}]/g) ?? []) {
    left = Math.max(0, left + ('[{'.includes(mark) ? 1 : -1));
    most = Math.max(most, left);
  }
  return { most, left };
}

/** `- - - a`: lists that a line opens inside one another. */
function listsOpened(line: string): number {
  return /^\s*((?:[-?:]\s+)*)/.exec(line)![1]!.replaceAll(/\s/g, '').length;
}
