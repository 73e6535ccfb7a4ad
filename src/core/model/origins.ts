import type { Place } from '../diagnostic.ts';

/**
 * Where every value of a workspace was written. Paths name fields as the author wrote them:
 * `guides/needle-block/steps/2/wait`, `materials/felt/packs/0/price`, `program/work/hours`.
 */
export interface Origins {
  /** The value at a path; the nearest written ancestor where the path itself was left to its default. */
  at(path: string): Place;
  /** The key itself rather than its value (to underline `wiat:`). */
  key(path: string): Place;
  /** A position in the prose of `guides/<id>` or `modules/<id>`. */
  prose(of: string, at: { readonly line: number; readonly column: number; readonly length: number }): Place;
}
