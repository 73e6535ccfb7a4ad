import { type Exact, exact } from '../../core/quantity/exact.ts';
import { roundTo } from '../../core/quantity/round.ts';
import { numberWords } from '../../words/units.ts';
import { fill } from './fill.ts';
import { showNumber } from './numbers.ts';

/** "83 %": the nearest whole percentage; what there is of something is never shown as none. */
export function showPercent(share: Exact): string {
  return percentText(share, roundTo(share.mul(100), exact(1)));
}

/** The same, never more than there is: 999 thousandths are "99 %". */
export function showPercentDown(share: Exact): string {
  return percentText(share, share.mul(100).floor());
}

function percentText(share: Exact, percent: Exact): string {
  return share.n > 0n && percent.n === 0n
    ? numberWords.underOnePercent
    : fill(numberWords.percent, { n: showNumber(percent) });
}
