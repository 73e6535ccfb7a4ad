import type { Ground } from '../ground/ground.ts';
import type { Line } from './rules.ts';

/**
 * Blocks that may change places with each other, since they are alike and of one kind; each set in the order of their
 * numbers, from the last to the first where time runs backwards.
 */
export function interchangeable({ problem, prepared }: Ground): number[][] {
  const { blocks, likeOf, kinds } = prepared;
  const sets = new Map<string, number[]>();
  blocks.forEach(([first], block) => {
    if (kinds[first!]! < 0) return;
    const key = `${likeOf[block]!} ${kinds[first!]!}`;
    sets.set(key, [...(sets.get(key) ?? []), block]);
  });
  const direction = problem.reversed ? -1 : 1;
  const byNumber = (a: number, b: number): number => direction * (blocks[a]![0]! - blocks[b]![0]!);
  return [...sets.values()].filter(({ length }) => length > 1).map((set) => set.sort(byNumber));
}

/**
 * What puts jobs that are interchangeable in the order of their numbers, each in a place that one of them had: so there
 * are far fewer lines to try.
 *
 *     cut 3 | melt 1 | cut 1 | cut 2     ->     cut 1 | melt 1 | cut 2 | cut 3
 */
export function inTurn(ground: Ground): (line: Line) => Line {
  const { blocks, durations } = ground.prepared;
  const sets = interchangeable(ground).flatMap((set) =>
    blocks[set[0]!]!.map((_, at) => set.map((block) => blocks[block]![at]!)),
  );
  const setOf = new Int32Array(durations.length).fill(-1);
  sets.forEach((jobs, set) => jobs.forEach((job) => (setOf[job] = set)));
  return (line) => {
    const next = new Int32Array(sets.length);
    return line.map((job) => {
      const set = setOf[job]!;
      return set < 0 ? job : sets[set]![next[set]!++]!;
    });
  };
}
