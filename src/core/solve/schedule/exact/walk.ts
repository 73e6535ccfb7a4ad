import { conflictIn, type Conflict } from './conflict.ts';
import type { EndBy } from './consequences.ts';
import { earliest, type Network } from './network.ts';

/** What has been seen of the tree of schedules. */
export interface Walked {
  /** Of the shortest schedule found, if any. */
  readonly starts?: readonly number[];
  /** Nothing shorter is left to find. */
  readonly all: boolean;
  /** The first conflict met. */
  readonly conflict?: Conflict;
}

/**
 * Walks through the tree, depth first: of two jobs in a conflict the first ends before the second starts, or it does
 * not. A schedule that is found lets only those follow that end earlier.
 *
 * @param bound  No schedule ends earlier.
 * @param top    Only what ends before it is looked for.
 */
export function walk(
  network: Network,
  endBy: EndBy,
  { bound, top, nodes }: { readonly bound: number; readonly top: number; readonly nodes: number },
): Walked {
  const { distances, end, durations } = network;
  const open: { readonly pair: readonly [first: number, second: number]; readonly mark: number }[] = [];
  let starts: Walked['starts'];
  let conflict: Walked['conflict'];
  let before = top;

  const goOn = ({ pair }: Conflict): boolean => {
    if (!pair) return false;
    open.push({ pair, mark: distances.mark() });
    return distances.settle(...pair, durations[pair[0]]!);
  };
  /** To the other side of the last branching that has one. */
  const turn = (): boolean => {
    for (let last = open.pop(); last; last = open.pop()) {
      const [first, second] = last.pair;
      distances.back(last.mark);
      if (distances.settle(second, first, 1 - durations[first]!)) return true;
    }
    return false;
  };

  let all = false;
  for (let node = 0; node < nodes && !all; node++) {
    const isDead = endBy(before - 1) !== undefined;
    const met = isDead ? undefined : conflictIn(network);
    conflict ??= met;
    if (met && goOn(met)) continue;
    if (!met && !isDead) {
      before = earliest(network, end);
      starts = durations.map((_, job) => earliest(network, job));
    }
    all = before <= bound || !turn();
  }
  return { all, ...(starts && { starts }), ...(conflict && { conflict }) };
}
