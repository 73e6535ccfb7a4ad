import type { Program } from '../../core/model/program.ts';
import type { CurvePoint } from '../../core/plan/result.ts';
import { type Exact, ceil, exact, floor, zero } from '../../core/quantity/exact.ts';
import { roundTo } from '../../core/quantity/round.ts';
import { handyBelow } from '../text/handy.ts';
import { showMoney } from '../text/money.ts';
import { showCount } from '../text/numbers.ts';
import type { CurveDrawing } from '../shown/shown-what-if.ts';
import { shown } from '../shown/shown.ts';
import { withRoom } from '../text/with-room.ts';

/** How many times the least outlay is drawn: the first few sizes cost so much that the teeth would not be seen. */
const drawnTimes = exact('5/2');

/**
 * The saw-tooth as places to draw by. What lies above the drawing has `up` above 1000.
 *
 *     |\    |\
 *     | \   | \   |\
 *     |  \__|  \__| \__
 *     +----------------
 *      1    5     9
 */
export function drawCurve(
  key: string,
  points: readonly CurvePoint[],
  current: number | undefined,
  purse: Pick<Program, 'currency' | 'minorDigits'>,
): CurveDrawing {
  const most = points.at(-1)!.models;
  const step = moneyStep(points, current);
  const top = step.mul(ceil(topOf(points, current).div(step)));
  const place = (value: Exact, whole: Exact): number =>
    whole.equals(0) ? 0 : roundTo(value.mul(1000).div(whole), exact(1)).valueOf();
  const across = (models: number): number => place(exact(models), exact(most));
  const labelled = labelledSizes(points, current, most);
  return {
    points: points.map(({ models, outlay, full }, i) => ({
      at: across(models),
      up: place(outlay, top),
      full,
      current: models === current,
      label: shown(`${key}.points[${i}].label`, labelled.has(models) ? showCount(models) : ''),
    })),
    across: sizesMarked(most).map((models, i) => ({
      at: across(models),
      label: shown(`${key}.across[${i}].label`, showCount(models)),
    })),
    up: multiples(step, top).map((value, i) => ({
      at: place(value, top),
      label: shown(`${key}.up[${i}].label`, showMoney(value, purse)),
    })),
  };
}

/** A label needs so much of the width, in hundredths of the most models. */
const roomForLabel = 4;

/** Sizes with their number on the curve: the batch that is planned, then those with full packs that have room. */
function labelledSizes(
  points: readonly CurvePoint[],
  current: number | undefined,
  most: number,
): ReadonlySet<number> {
  const full = points.filter((point) => point.full).map(({ models }) => models);
  const isNear = (a: number, b: number): boolean => Math.abs(a - b) * 100 < roomForLabel * most;
  return new Set(withRoom([...(current === undefined ? [] : [current]), ...full], isNear));
}

/** The highest that is drawn: a few times the least, and never below the batch that is planned. */
function topOf(points: readonly CurvePoint[], current: number | undefined): Exact {
  const outlays = points.map(({ outlay }) => outlay);
  const least = outlays.reduce((a, b) => (b.compare(a) < 0 ? b : a));
  const most = outlays.reduce((a, b) => (b.compare(a) > 0 ? b : a));
  const now = points.find(({ models }) => models === current)?.outlay ?? zero;
  const wanted = [least.mul(drawnTimes), now.mul('11/10')].reduce((a, b) => (b.compare(a) > 0 ? b : a));
  const top = wanted.compare(most) > 0 ? most : wanted;
  return top.equals(0) ? exact(1) : top;
}

/** Three to seven marks on the scale of money. */
function moneyStep(points: readonly CurvePoint[], current: number | undefined): Exact {
  return handyBelow(topOf(points, current).div(3));
}

function multiples(step: Exact, top: Exact): readonly Exact[] {
  return Array.from({ length: floor(top.div(step)) + 1 }, (_, i) => step.mul(i));
}

/** Sizes at the foot: multiples of a handy number, at most ten. */
function sizesMarked(most: number): readonly number[] {
  const every = Math.max(1, floor(handyBelow(exact(Math.max(most, 1)).div(5))));
  return Array.from({ length: Math.floor(most / every) }, (_, i) => (i + 1) * every);
}
