import { mostModules, qrCode, qrModules } from '../../rendering/qr-code.ts';
import { sheetWords } from '../../words/sheets.ts';
import type { SheetCode } from '../../../templates/sheets/sheet-frame.tsx';

/**
 * The code on a sheet: it leads to the guide's page, which then shows the plan of the sheet. Settings that make a code
 * too dense to be read from paper are left out, and it does not say that it has them.
 *
 * @param query  Empty where all is as published.
 */
export function sheetCode(address: string, query: string): SheetCode {
  const withSettings = `${address}?${query}`;
  return query !== '' && qrModules(withSettings) <= mostModules
    ? codeOf(withSettings, sheetWords.scanPlan)
    : codeOf(address, sheetWords.scan);
}

function codeOf(address: string, says: string): SheetCode {
  return { picture: qrCode(address, says), says };
}
