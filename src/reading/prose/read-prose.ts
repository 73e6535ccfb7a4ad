import type { Html, Nodes } from 'mdast';
import type { Prose } from '../../core/model/prose.ts';
import type { YamlText } from '../sheet/sheet.ts';
import type { Report } from '../report.ts';
import { hiddenIn } from '../text/hidden.ts';
import type { Source } from '../text/source.ts';
import { parseMarkdown } from './markdown.ts';
import { placeOf, readDocument, withAllBelow, type FileExists, type MarkdownDocument } from './document.ts';
import { reportTooMuch } from './prose-limits.ts';
import { reportBadLinks } from './prose-links.ts';
import { prosePlace } from './prose-place.ts';

/** The prose of a guide, or `undefined` after a report where it goes over a limit. */
export function readProse(
  source: Source,
  text: YamlText,
  exists: FileExists,
  report: Report,
): { readonly prose: Prose; readonly document: MarkdownDocument } | undefined {
  if (reportTooMuch(source, text, report)) return undefined;
  const linesBefore = source.text.slice(0, text.offset).split('\n').length - 1;
  const read = readDocument(parseMarkdown(text.text, linesBefore), exists);
  reportHtml(read.document, source, report);
  reportHiddenEntities(read.document, source, report);
  reportBadLinks(read.prose, source, report);
  return read;
}

/** Raw HTML is refused; of a pair of tags the opening one is reported. */
function reportHtml(document: MarkdownDocument, source: Source, report: Report): void {
  for (const node of withAllBelow(document.root).filter(isOpeningHtml)) {
    const place = prosePlace(source, placeOf(node));
    const tag = /^<[^>\s]*>?/.exec(node.value)![0];
    const variant = tag.startsWith('<!') ? { variant: 'comment' } : {};
    report(
      { code: 'raw-html', ...variant, facts: { tag } },
      { ...place, length: firstLineLength(node.value) },
    );
  }
}

const isOpeningHtml = (node: Nodes): node is Html => node.type === 'html' && !node.value.startsWith('</');
const firstLineLength = (value: string): number => Math.max(1, value.split('\n', 1)[0]!.length);

/** `&#x202e;` brings in what a file may not hold as it is: in a text, an address, the words of a picture. */
function reportHiddenEntities(document: MarkdownDocument, source: Source, report: Report): void {
  for (const node of withAllBelow(document.root)) {
    const found = hiddenIn(textsOf(node).join(' '));
    if (found) report(found, prosePlace(source, placeOf(node)));
  }
}

/** What a node says itself, without the nodes below it. */
function textsOf(node: Nodes): readonly string[] {
  const own: readonly unknown[] = ['value', 'url', 'title', 'alt'].map((key) => Reflect.get(node, key));
  return own.filter((text) => typeof text === 'string');
}
