import type { Prepared } from '../ground/prepared.ts';
import { freeAll, freeFirst, row, take, type Row } from './row.ts';

/**
 * Which block is placed next: of those whose forerunners all have a place, the first in line. A block that waits for
 * something held without a known end stands aside until it is given back.
 */
export interface Queue {
  /** Begins anew, with all blocks in the order of `rank` (for each job its place in the line, each number once). */
  lineUp(rank: Int32Array): void;
  /** Takes the next block out; -1 when nothing can go on (or all have a place). */
  next(): number;
  /** Lets the followers of a block come, now that it has a place. */
  placed(block: number): void;
  /** The block that was taken out stands aside until this usage is given back. */
  park(block: number, usage: number): void;
  /** The first of those that wait for a usage may try again; when it succeeds, the next one may. */
  wake(usage: number): void;
  /** Takes all blocks placed since this one, and it, back into the line; the last placed comes first. */
  goBackTo(block: number): number[];
}

export function queue({ blocks, followers, usages, durations }: Prepared): Queue {
  const jobs = durations.length;
  const blockAt = new Int32Array(jobs);
  const placeOf = new Int32Array(blocks.length);
  const pending = new Int32Array(blocks.length);
  const forerunners = new Int32Array(blocks.length);
  for (const next of followers) for (const follower of next) forerunners[follower]!++;
  const wokenFrom = new Int32Array(blocks.length);
  const ready = row(jobs);
  const parked: (Row | undefined)[] = Array.from({ length: usages });
  const sequence: number[] = [];
  let placedAtLastCall = -1;

  /** All but those in `sequence`, which have their places. */
  const begin = (): void => {
    freeAll(ready);
    for (const line of parked) if (line) freeAll(line);
    wokenFrom.fill(-1);
    placedAtLastCall = -1;
    pending.set(forerunners);
    for (const block of sequence) {
      pending[block] = -1;
      for (const follower of followers[block]!) pending[follower]!--;
    }
    for (let block = 0; block < blocks.length; block++)
      if (pending[block] === 0) take(ready, placeOf[block]!);
  };
  const nextOf = (line: Row): number => {
    const place = freeFirst(line);
    return place < 0 ? -1 : blockAt[place]!;
  };
  const wake = (usage: number): boolean => {
    const line = parked[usage];
    const block = line ? nextOf(line) : -1;
    if (block < 0) return false;
    take(ready, placeOf[block]!);
    wokenFrom[block] = usage;
    return true;
  };
  /** All who stand aside may try once more; twice without progress is a deadlock. */
  const lastCall = (): number => {
    if (placedAtLastCall === sequence.length) return -1;
    placedAtLastCall = sequence.length;
    for (let usage = 0; usage < usages; usage++) while (wake(usage));
    return nextOf(ready);
  };

  return {
    lineUp(rank) {
      sequence.length = 0;
      for (let block = 0; block < blocks.length; block++) {
        let first = jobs;
        for (const job of blocks[block]!) first = Math.min(first, rank[job]!);
        placeOf[block] = first;
        blockAt[first] = block;
      }
      begin();
    },
    next() {
      const block = nextOf(ready);
      return block < 0 ? lastCall() : block;
    },
    placed(block) {
      sequence.push(block);
      for (const follower of followers[block]!)
        if (--pending[follower]! === 0) take(ready, placeOf[follower]!);
      const usage = wokenFrom[block]!;
      wokenFrom[block] = -1;
      if (usage >= 0) wake(usage);
    },
    park(block, usage) {
      wokenFrom[block] = -1;
      take((parked[usage] ??= row(jobs)), placeOf[block]!);
    },
    wake,
    goBackTo(block) {
      const back = sequence.splice(sequence.lastIndexOf(block)).reverse();
      begin();
      return back;
    },
  };
}
