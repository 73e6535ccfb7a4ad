/** A length that may be cut from a rod: what it is worth there, and how many are still wanted. */
export interface Wanted {
  readonly length: number;
  readonly worth: number;
  readonly count: number;
}

/**
 * How many of each to cut from one rod so that together they are worth most. Looks at 1,000 ways at most, those with
 * more of what is worth most for its length first.
 *
 * @source Depth-first search with the bound of a fraction: Horowitz and Sahni (1974), J ACM 21:277–292. From memory.
 */
export function bestPattern(wanted: readonly Wanted[], room: number): number[] {
  const rate = (at: number): number => wanted[at]!.worth / wanted[at]!.length;
  const order = wanted.map((_, at) => at).sort((a, b) => rate(b) - rate(a) || a - b);
  const counts = wanted.map(() => 0);
  let best = { worth: 0, counts: [...counts] };
  let work = 1000;
  const go = (next: number, left: number, worth: number): void => {
    if (worth > best.worth) best = { worth, counts: [...counts] };
    const at = order[next];
    if (at === undefined || worth + left * rate(at) <= best.worth || work-- <= 0) return;
    const { length, worth: each, count: most } = wanted[at]!;
    for (let count = Math.min(most, Math.floor(left / length)); count >= 0; count--) {
      counts[at] = count;
      go(next + 1, left - count * length, worth + count * each);
    }
    counts[at] = 0;
  };
  go(0, room, 0);
  return best.counts;
}
