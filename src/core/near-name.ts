/**
 * The known name nearest to a mistyped one, if it is near enough to be what was meant.
 *
 * Near enough: at most one edit in names of up to four letters, two up to eight, three beyond. An edit is a letter
 * added, dropped, changed, or two neighbours swapped.
 *
 * @returns `undefined` where none is near. Ties: the first of `known`.
 * @source Optimal string alignment distance (Damerau 1964, Commun ACM 7:171–176; the recurrence from memory).
 */
export function nearName(typed: string, known: Iterable<string>): string | undefined {
  const allowed = typed.length <= 4 ? 1 : typed.length <= 8 ? 2 : 3;
  let best: string | undefined;
  let bestDistance = allowed + 1;
  for (const name of known) {
    if (Math.abs(name.length - typed.length) >= bestDistance) continue;
    const distance = editDistance(typed.toLowerCase(), name.toLowerCase());
    if (distance < bestDistance) [best, bestDistance] = [name, distance];
  }
  return best;
}

/** Fewest edits that turn `a` into `b`. */
export function editDistance(a: string, b: string): number {
  let twoAbove: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row[j] = Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + (same ? 0 : 1));
      if (swapped) row[j] = Math.min(row[j]!, twoAbove[j - 2]! + 1);
    }
    [twoAbove, above] = [above, row];
  }
  return above[b.length]!;
}
