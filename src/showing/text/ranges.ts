import { type Exact, exact } from '../../core/quantity/exact.ts';

/** From above `least` up to `most`; one of the two is absent at either end. */
export interface Range {
  readonly least?: Exact;
  readonly most?: Exact;
}

/** So many limits at most stand between the ranges. */
const mostLimits = 4;

/**
 * Ranges that tell some values from others, none of them empty, at most five.
 *
 *     1.20, 1.80, 3, 7.50 on 1, 2, 5, 10   ->   up to 2 | 2 to 5 | over 5
 *
 * @param ladder  Limits that read well, rising. Of two that part the values alike the lower is taken.
 * @returns Empty where no limit tells any apart.
 */
export function rangesOver(values: readonly Exact[], ladder: readonly Exact[]): readonly Range[] {
  const below = (limit: Exact): number => values.filter((value) => value.compare(limit) <= 0).length;
  let limits = ladder
    .map((limit) => ({ limit, below: below(limit) }))
    .filter(({ below: count }, i, all) => count > 0 && count < values.length && count !== all[i - 1]?.below);
  while (limits.length > mostLimits) limits = withoutNarrowest(limits, values.length);
  if (limits.length === 0) return [];
  return [
    { most: limits[0]!.limit },
    ...limits.slice(1).map(({ limit }, i) => ({ least: limits[i]!.limit, most: limit })),
    { least: limits.at(-1)!.limit },
  ];
}

interface Limit {
  readonly limit: Exact;
  readonly below: number;
}

/** Without the limit whose two sides together hold the fewest values; of several the last. */
function withoutNarrowest(limits: readonly Limit[], count: number): Limit[] {
  const held = limits.map((_, i) => (limits[i + 1]?.below ?? count) - (limits[i - 1]?.below ?? 0));
  const narrowest = held.lastIndexOf(Math.min(...held));
  return limits.filter((_, i) => i !== narrowest);
}

export function isWithin(value: Exact, { least, most }: Range): boolean {
  return (
    (least === undefined || value.compare(least) > 0) && (most === undefined || value.compare(most) <= 0)
  );
}

/** 1, 2, 5, 10, 20, 50 and so on, from a hundredth up to a hundred thousand. */
export const roundSums: readonly Exact[] = [-2, -1, 0, 1, 2, 3, 4, 5].flatMap((power) =>
  [1, 2, 5].map((digit) => (power < 0 ? exact(digit).div(10 ** -power) : exact(digit * 10 ** power))),
);
