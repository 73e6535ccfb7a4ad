import type { InPieces } from '../../core/in-pieces.ts';

/** What a page runs long work with. Time is known here alone: it decides when to rest, never what comes out. */
export interface Slicing {
  /** Milliseconds. */
  readonly now: () => number;
  /** Calls back when the page has had its turn. */
  readonly later: (goOn: () => void) => void;
  /** The longest that the page may be held up, in milliseconds. */
  readonly budget: number;
}

/**
 * Does work piece by piece, so that the page stays awake.
 *
 *     |work ≤ 8 ms| page |work ≤ 8 ms| page |work| done
 *
 * @param done  Called once with what has come of it, unless it is stopped before.
 * @param failed  Called once with what the work has thrown.
 * @returns What stops it: nothing is called after that.
 */
export function runInSlices<T>(
  work: InPieces<T>,
  { now, later, budget }: Slicing,
  done: (result: T) => void,
  failed: (fault: unknown) => void,
): () => void {
  let isStopped = false;
  const goOn = (): void => {
    if (isStopped) return;
    const began = now();
    try {
      do {
        const next = work.next();
        if (next.done) return done(next.value);
      } while (now() - began < budget);
    } catch (fault) {
      return failed(fault);
    }
    later(goOn);
  };
  later(goOn);
  return () => {
    isStopped = true;
  };
}
