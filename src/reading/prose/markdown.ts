import type { Root } from 'mdast';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { gfmTable } from 'micromark-extension-gfm-table';
import remarkParse from 'remark-parse';
import { unified } from 'unified';

/** CommonMark and tables, nothing else: no footnotes, no literal links, no directives (they would eat `1:10`). */
const parser = unified()
  .use(remarkParse)
  .data('micromarkExtensions', [gfmTable()])
  .data('fromMarkdownExtensions', [gfmTableFromMarkdown()])
  .freeze();

/**
 * The tree of a Markdown text, with lines and columns of its file.
 *
 * @param linesBefore  How many lines of the file stand before the text.
 */
export function parseMarkdown(text: string, linesBefore: number): Root {
  return parser.parse('\n'.repeat(linesBefore) + text);
}
