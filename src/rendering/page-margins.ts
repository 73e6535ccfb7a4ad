import { type Paper, papers } from '../core/model/paper.ts';

/** What the margins of each printed page say. */
export interface PageMargins {
  readonly title: string;
  /** With a line to write on, at the upper right; a page that belongs to no batch has none. */
  readonly batchNumber?: string;
  readonly program: string;
  /** "Page {page} of {pages}" */
  readonly page: string;
  /** Where it is known; else the reader's printer decides, and the style of the sheet takes either. */
  readonly paper?: Paper;
}

/** What leaves 182 by 255 mm on each paper, so that both have the same pages. */
const margins: Readonly<Record<Paper, string>> = {
  A4: '21.2mm 13.9mm 20.6mm',
  Letter: '12.4mm 16.8mm 11.8mm',
};

/**
 * The style of a sheet's margins: title and batch above, program and page below, on every page. A file of its own,
 * since a page may hold no style, and since only a style can count pages.
 *
 * @source CSS Paged Media Module Level 3, sections 5 (margin boxes) and 5.3 (page counters).
 */
export function pageMargins({ title, batchNumber, program, page, paper }: PageMargins): string {
  return `@page {
${paper ? sheetOf(paper) : ''}  @top-left { content: ${quoted(title)}; }
${batchNumber === undefined ? '' : `  @top-right { content: ${quoted(batchNumber)} " ______________"; }\n`}  @bottom-left { content: ${quoted(program)}; }
  @bottom-right { content: ${counted(page)}; }
}
`;
}

function sheetOf(paper: Paper): string {
  const { width, height } = papers[paper];
  return `  size: ${width}mm ${height}mm;\n  margin: ${margins[paper]};\n`;
}

/** "Page {page} of {pages}" -> `"Page " counter(page) " of " counter(pages)`. */
function counted(sentence: string): string {
  const parts = sentence.split(/(\{page\}|\{pages\})/).filter((part) => part !== '');
  return parts
    .map((part) => (/^\{pages?\}$/.test(part) ? `counter(${part.slice(1, -1)})` : quoted(part)))
    .join(' ');
}

/** A string of CSS: everything but plain letters, digits and a few marks is escaped, so that no text can end it. */
function quoted(text: string): string {
  const escaped = text.replace(
    /[^\p{L}\p{N} .,:;·–’()+×%/-]/gu,
    (mark) => `\\${mark.codePointAt(0)!.toString(16)} `,
  );
  return `"${escaped}"`;
}
