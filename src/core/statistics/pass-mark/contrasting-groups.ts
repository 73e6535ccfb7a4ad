/** Scores of a group: mean and standard deviation. */
export interface Spread {
  readonly mean: number;
  readonly deviation: number;
}

/**
 * The score at which two normal curves cross between their means: those who were judged not ready, and those who were.
 *
 *        not ready     ready
 *          .-.         .--.
 *        /     \     /      \
 *     --'        `-X-'        `--
 *                  |
 *
 * @returns `undefined` where they do not cross there.
 * @source The contrasting-groups method of handbooks of medical education; the crossing of two normal densities is a
 *         root of a quadratic equation (both from memory).
 */
export function contrastingGroups(below: Spread, above: Spread): number | undefined {
  const [low, high] = [Math.min(below.mean, above.mean), Math.max(below.mean, above.mean)];
  return crossings(below, above).find((score) => score >= low && score <= high);
}

/** Where the logarithms of the densities are equal: `a x² + b x + c = 0`. */
function crossings(one: Spread, other: Spread): readonly number[] {
  const [v, w] = [one.deviation ** 2, other.deviation ** 2];
  const a = w - v;
  const b = 2 * (other.mean * v - one.mean * w);
  const c = one.mean ** 2 * w - other.mean ** 2 * v - 2 * v * w * Math.log(other.deviation / one.deviation);
  if (a === 0) return b === 0 ? [] : [-c / b];
  const root = Math.sqrt(b ** 2 - 4 * a * c);
  return Number.isNaN(root) ? [] : [(-b - root) / (2 * a), (-b + root) / (2 * a)];
}
