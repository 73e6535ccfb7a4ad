/**
 * The least time from each moment to each other, by all that is settled so far; what has been settled can be taken
 * back, last first.
 *
 *     a ---> i ==least==> j ---> b        a new arc lengthens the way of every a to every b that it serves
 *
 * @source Incremental longest paths; Bartusch, Möhring and Radermacher, Annals of Operations Research 16 (1988), on
 *         projects with greatest lags (from memory).
 */
export interface Distances {
  readonly size: number;
  /** `at[i * size + j]`: j never comes less than this after i. -Infinity: nothing is known. */
  readonly at: Float64Array;
  /** Lets j come at least so long after i. No, and nothing is changed, where i would have to come after itself. */
  settle(i: number, j: number, least: number): boolean;
  /** A place to come back to. */
  mark(): number;
  /** Takes back all that has been settled since a mark. */
  back(mark: number): void;
}

export function distances(size: number): Distances {
  const at = new Float64Array(size * size).fill(-Infinity);
  for (let i = 0; i < size; i++) at[i * size + i] = 0;
  /** The record: which cells were changed, and what they were before. */
  const [changed, before]: [number[], number[]] = [[], []];
  let reach = 0;
  const served = new Int32Array(size);

  /** The moments that come later because j does. */
  const servedBy = (i: number, j: number, least: number): number => {
    let count = 0;
    for (let b = 0; b < size; b++) if (least + at[j * size + b]! > at[i * size + b]!) served[count++] = b;
    return count;
  };

  return {
    size,
    at,
    settle(i, j, least) {
      if (at[i * size + j]! >= least) return true;
      if (at[j * size + i]! + least > 0) return false;
      const count = servedBy(i, j, least);
      for (let a = 0; a < size; a++) {
        const toJ = at[a * size + i]! + least;
        if (toJ <= at[a * size + j]!) continue;
        for (let k = 0; k < count; k++) {
          const cell = a * size + served[k]!;
          const longer = toJ + at[j * size + served[k]!]!;
          if (longer <= at[cell]!) continue;
          changed[reach] = cell;
          before[reach++] = at[cell]!;
          at[cell] = longer;
        }
      }
      return true;
    },
    mark: () => reach,
    back(mark) {
      while (reach > mark) at[changed[--reach]!] = before[reach]!;
    },
  };
}
