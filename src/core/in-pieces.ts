/**
 * Work that may be laid aside after each small piece of it, and taken up again: a page stays awake between two pieces.
 * What comes of it is the same whichever way it is run.
 */
export type InPieces<T> = Generator<void, T, void>;

/** The same work done at once. */
export function atOnce<T>(work: InPieces<T>): T {
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
  }
}

/** What each of some things comes to, one after the other. */
export function* oneByOne<T, U>(
  all: readonly T[],
  comesTo: (one: T, index: number) => U,
): InPieces<readonly U[]> {
  const found: U[] = [];
  for (const [index, one] of all.entries()) {
    found.push(comesTo(one, index));
    yield;
  }
  return found;
}
