import type { Judged, PassMark, Scoring } from '../model/module.ts';
import { type Exact, exact, one, zero } from '../quantity/exact.ts';
import { angoff } from '../statistics/pass-mark/angoff.ts';
import { borderlineRegression } from '../statistics/pass-mark/borderline-regression.ts';
import { contrastingGroups, type Spread } from '../statistics/pass-mark/contrasting-groups.ts';
import { weightOf } from './checklist-score.ts';

/**
 * The share of all points that passes, from what the judges said.
 *
 * @returns `undefined` where their data give none: nobody judged, all in one group or with one rating, groups that do
 *          not cross, or a mark below 0 or above all points.
 */
export function passMarkOf({ items }: Pick<Scoring, 'items'>, pass: PassMark): Exact | undefined {
  const isWeighed = weightOf(items).compare(zero) > 0;
  const mark = pass.judged && isWeighed ? markOf(pass.judged, items, pass) : undefined;
  return mark && mark.compare(zero) >= 0 && mark.compare(one) <= 0 ? mark : undefined;
}

function markOf(judged: Judged, items: Scoring['items'], { borderline = '2' }: PassMark): Exact | undefined {
  const all = weightOf(items);
  switch (judged.method) {
    case 'angoff': {
      const shares = judged.shares.map((judge) => judge.map(exact));
      const points = items.map(({ weight }) => exact(weight));
      return shares.length === 0 ? undefined : angoff(shares, points);
    }
    case 'borderline-regression': {
      const rated = judged.rated.map(({ rating, points }) => ({
        rating: exact(rating),
        score: exact(points).div(all),
      }));
      return borderlineRegression(rated, exact(borderline));
    }
    case 'contrasting-groups': {
      const [below, above] = [false, true].map((ready) =>
        spreadOf(judged.people.filter((person) => person.ready === ready)),
      );
      const points = below && above && contrastingGroups(below, above);
      return points === undefined ? undefined : millionths(points).div(all);
    }
  }
}

type Groups = Extract<Judged, { method: 'contrasting-groups' }>['people'];

/**
 * Mean and standard deviation of a sample; `undefined` of fewer than two people, or where all have the same points.
 *
 * @source Sample standard deviation, n - 1 in the denominator; any textbook of statistics (from memory).
 */
function spreadOf(people: Groups): Spread | undefined {
  const points = people.map((person) => exact(person.points));
  if (points.length < 2) return undefined;
  const mean = points.reduce((sum, of) => sum.add(of), zero).div(points.length);
  const squares = points.reduce((sum, of) => sum.add(of.sub(mean).pow(2)!), zero);
  const deviation = Math.sqrt(squares.div(points.length - 1).valueOf());
  return deviation > 0 ? { mean: mean.valueOf(), deviation } : undefined;
}

/** A root is no fraction: to the nearest millionth, which no shown digit depends on. */
function millionths(x: number): Exact {
  return exact(Math.round(x * 1e6)).div(1e6);
}
