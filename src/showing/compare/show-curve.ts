import type { Workspace } from '../../core/model/workspace.ts';
import type { CurvePoint, Plan } from '../../core/plan/result.ts';
import { whatIfWords } from '../../words/what-if.ts';
import { planWords } from '../../words/plan.ts';
import { drawCurve } from './draw-curve.ts';
import { fill, listed } from '../text/fill.ts';
import { showSum } from '../text/money.ts';
import { showCount } from '../text/numbers.ts';
import type { ShownCurve } from '../shown/shown-what-if.ts';
import { shown } from '../shown/shown.ts';

const { curve: words } = whatIfWords;

/** So many sizes that fill their packs are listed in a sentence. */
const sizesListed = 8;

/**
 * Outlay of one good model by the size of the batch: which sizes fill their packs, every size as a table, and the
 * saw-tooth to draw.
 *
 * @param points  Of a plan of one line, in order of size; at least one.
 */
export function showCurve(points: readonly CurvePoint[], plan: Plan, workspace: Workspace): ShownCurve {
  const current = plan.lines[0]?.wanted;
  return {
    full: shown('curve.full', fullText(points)),
    rows: points.map(({ models, outlay, full }, i) => ({
      models: shown(`curve.rows[${i}].models`, showCount(models)),
      each: shown(`curve.rows[${i}].each`, showSum(outlay, workspace.program, plan.cost.complete)),
      note: shown(`curve.rows[${i}].note`, noteText(full, models === current)),
    })),
    drawing: drawCurve('curve.drawing', points, current, workspace.program),
  };
}

/** "Packs are full at 4, 8 and 12 models."; of many sizes the first ones, and which of them is the cheapest. */
function fullText(points: readonly CurvePoint[]): string {
  const full = points.filter((point) => point.full);
  const most = points.at(-1)!.models;
  if (full.length === 0) return fill(words.neverFull, { most: showCount(most) });
  if (full.length <= sizesListed)
    return fill(words.full, { sizes: listed(full.map(({ models }) => showCount(models))) });
  const best = full.reduce((a, b) => (b.outlay.compare(a.outlay) < 0 ? b : a));
  return fill(words.fullMany, {
    sizes: full
      .slice(0, sizesListed)
      .map(({ models }) => showCount(models))
      .join(planWords.listComma),
    more: showCount(full.length - sizesListed),
    best: showCount(best.models),
  });
}

function noteText(full: boolean, current: boolean): string {
  return [...(full ? [words.isFull] : []), ...(current ? [words.isCurrent] : [])].join(planWords.listComma);
}
