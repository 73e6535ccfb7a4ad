import { type Exact, zero } from '../../quantity/exact.ts';

/** What one person was given: a global rating by an examiner, and the score of the checklist. */
export interface Rated {
  readonly rating: Exact;
  readonly score: Exact;
}

/**
 * The score that the line of least squares through ratings and scores gives to a borderline rating.
 *
 *     score |          . /
 *           |        ./ .
 *      11.4 |.....  /
 *           |   . /:
 *           +------------
 *             1  2  3  4  5   rating; 2 is borderline
 *
 * @returns Exact; `undefined` where all have one rating, so that there is no line.
 * @source The borderline regression method of handbooks of medical education; from memory.
 */
export function borderlineRegression(rated: readonly Rated[], borderline: Exact): Exact | undefined {
  const [rating, score] = [
    meanOf(rated.map(({ rating }) => rating)),
    meanOf(rated.map(({ score }) => score)),
  ];
  if (!rating || !score) return undefined;
  const together = sumOf(rated.map((one) => one.rating.sub(rating).mul(one.score.sub(score))));
  const spread = sumOf(rated.map((one) => one.rating.sub(rating).pow(2)!));
  return spread.equals(zero) ? undefined : score.add(together.div(spread).mul(borderline.sub(rating)));
}

function meanOf(numbers: readonly Exact[]): Exact | undefined {
  return numbers.length === 0 ? undefined : sumOf(numbers).div(numbers.length);
}

function sumOf(numbers: readonly Exact[]): Exact {
  return numbers.reduce((sum, number) => sum.add(number), zero);
}
