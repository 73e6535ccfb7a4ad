import { pageMargins } from '../../rendering/page-margins.ts';
import { fill } from '../../showing/text/fill.ts';
import { sheetWords } from '../../words/sheets.ts';
import type { SheetContext } from './sheet-context.ts';

/** "{guide} · bench sheet · {version} · {batch}", and the same for a guide that has no version. */
export interface HeadWords {
  readonly head: string;
  readonly headNoVersion: string;
}

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

/** What stands at the head of each printed page, for a batch of some models. */
export function marginTitle(
  { guide, line }: SheetContext['planned'],
  { head, headNoVersion }: HeadWords,
  batch: string,
): string {
  const version = guide.version.text;
  const facts = { guide: line.title.text, batch };
  return version === '' ? fill<string>(headNoVersion, facts) : fill<string>(head, { ...facts, version });
}
