import { leastFirst, type LeastFirst } from '../../least-first.ts';
import type { Prepared } from '../ground/prepared.ts';

/**
 * Which block is placed next: of those whose forerunners all have a place, the first in line. A block that waits for
 * something held without a known end stands aside until it is given back.
 */
export interface Queue {
  /** Takes the next block out; `undefined` when nothing can go on (or all have a place). */
  next(): number | undefined;
  /** Lets the followers of a block come, now that it has a place. */
  placed(block: number): void;
  /** The block that was taken out stands aside until this usage is given back. */
  park(block: number, usage: number): void;
  /** The first of those that wait for a usage may try again; when it succeeds, the next one may. */
  wake(usage: number): void;
  /** Takes all blocks placed since this one, and it, back into the line; the last placed comes first. */
  goBackTo(block: number): number[];
}

/** A line of all blocks, in the order of `rank` (for each job its place, each number once). */
export function queue(prepared: Prepared, rank: readonly number[]): Queue {
  const first = prepared.blocks.map((block) => Math.min(...block.map((job) => rank[job]!)));
  const line = (): LeastFirst<number> => leastFirst((a, b) => first[a]! - first[b]!);
  const { followers } = prepared;
  const sequence: number[] = [];
  const wokenFrom = new Map<number, number>();
  let [ready, parked, placedAtLastCall] = [line(), new Map<number, LeastFirst<number>>(), -1];
  let pending: number[] = [];

  const lineUp = (): void => {
    [ready, parked, placedAtLastCall] = [line(), new Map(), -1];
    const done = new Set(sequence);
    pending = prepared.blocks.map(() => 0);
    followers.forEach((next, block) => !done.has(block) && next.forEach((follower) => pending[follower]!++));
    pending.forEach((count, block) => count === 0 && !done.has(block) && ready.add(block));
  };
  const wakeOne = (usage: number): boolean => {
    const block = parked.get(usage)?.next();
    if (block === undefined) return false;
    ready.add(block);
    wokenFrom.set(block, usage);
    return true;
  };
  /** All who stand aside may try once more; twice without progress is a deadlock. */
  const lastCall = (): number | undefined => {
    if (placedAtLastCall === sequence.length) return undefined;
    placedAtLastCall = sequence.length;
    for (const usage of parked.keys()) while (wakeOne(usage));
    return ready.next();
  };

  lineUp();
  return {
    next: () => ready.next() ?? lastCall(),
    placed(block) {
      sequence.push(block);
      for (const follower of followers[block]!) if (--pending[follower]! === 0) ready.add(follower);
      const usage = wokenFrom.get(block);
      wokenFrom.delete(block);
      if (usage !== undefined) wakeOne(usage);
    },
    park(block, usage) {
      wokenFrom.delete(block);
      if (!parked.has(usage)) parked.set(usage, line());
      parked.get(usage)!.add(block);
    },
    wake: (usage) => void wakeOne(usage),
    goBackTo(block) {
      const back = sequence.splice(sequence.lastIndexOf(block)).reverse();
      lineUp();
      return back;
    },
  };
}
