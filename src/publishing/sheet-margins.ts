import { pageMargins } from '../rendering/page-margins.ts';
import { fill } from '../showing/fill.ts';
import { sheetWords } from '../words/sheets.ts';
import type { SheetContext } from './sheet-context.ts';

/** "{guide} · bench sheet · {version} · {batch}", and the same for a guide that has no version. */
interface HeadWords {
  readonly head: string;
  readonly headNoVersion: string;
}

/** What the margins of a sheet say, as the file beside it. */
export function sheetMargins(context: SheetContext, { head, headNoVersion }: HeadWords): Uint8Array {
  const { planned, site, isFixed, paper } = context;
  const version = planned.guide.version.text;
  const facts = { guide: planned.line.title.text, batch: planned.batch };
  const title =
    version === '' ? fill<string>(headNoVersion, facts) : fill<string>(head, { ...facts, version });
  const style = pageMargins({
    title,
    batchNumber: sheetWords.batchNumber,
    program: site.program,
    page: sheetWords.page,
    ...(isFixed ? { paper } : {}),
  });
  return new TextEncoder().encode(style);
}
