import type { LabelStock } from '../core/model/label-stock.ts';
import { papers } from '../core/model/paper.ts';

/**
 * Where the labels of each sheet lie, as the file beside the sheet: a page may hold no style. A page has no margins, so
 * that a place on it is a place on the paper; `--nudge-across` and `--nudge-down` move all labels.
 *
 * @source CSS Paged Media Module Level 3, section 4 (named pages).
 */
export function labelStyles(stocks: readonly LabelStock[]): string {
  const pages = Object.entries(papers).map(
    ([name, { width, height }]) => `@page ${name} { size: ${width}mm ${height}mm; margin: 0; }\n`,
  );
  return [...pages, ...stocks.map(stockStyle)].join('');
}

/** From this height on, in mm, a label has room for all that is in a model. */
const roomy = 60;
/** Below this height letters are smaller and closer, so that all that must stand on a label does. */
const low = 30;
/** So much less than the paper: what is as large as the paper may already take a second one. */
const hair = 0.3;

function stockStyle(stock: LabelStock): string {
  const { id, paper, across, width, height, pitchAcross, pitchDown, left, top } = stock;
  const gapAcross = round(pitchAcross - width);
  const gapDown = round(pitchDown - height);
  const small = height < roomy ? `[data-stock='${id}'] .label-made-of { display: none; }\n` : '';
  return `${small}[data-stock='${id}'] .label-page {
  page: ${paper};
  inline-size: ${round(papers[paper].width - hair)}mm;
  block-size: ${round(papers[paper].height - hair)}mm;
  padding-block-start: calc(${top}mm + var(--nudge-down, 0mm));
  padding-inline-start: calc(${left}mm + var(--nudge-across, 0mm));
  grid-template-columns: repeat(${across}, ${width}mm);
  --label-letters: ${height < low ? 0.78 : 1};
  --label-air: ${height < low ? 0.2 : 1};
  grid-auto-rows: ${height}mm;
  gap: ${gapDown}mm ${gapAcross}mm;
}
`;
}

const round = (length: number): number => Math.round(length * 1000) / 1000;
