import { pageMargins } from '../../rendering/page-margins.ts';
import { sheetWords } from '../../words/sheets.ts';
import { type HeadWords, marginTitle } from './margin-title.ts';
import type { SheetContext } from './sheet-context.ts';

/** What the margins of a sheet say, as the file beside it. */
export function sheetMargins(context: SheetContext, words: HeadWords): Uint8Array {
  const { planned, site, isFixed, paper } = context;
  const style = pageMargins({
    title: marginTitle(planned, words, planned.batch),
    batchNumber: sheetWords.batchNumber,
    program: site.program,
    page: sheetWords.page,
    ...(isFixed ? { paper } : {}),
  });
  return new TextEncoder().encode(style);
}
