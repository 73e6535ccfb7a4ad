import type { Ground } from '../ground/ground.ts';

/**
 * Blocks that may change places with each other, since they are alike and of one kind; each set in the order of their
 * numbers, from the last to the first where time runs backwards.
 */
export function interchangeable({ problem, prepared }: Ground): number[][] {
  const { blocks, likeOf, kinds } = prepared;
  const sets = new Map<string, number[]>();
  blocks.forEach(([first], block) => {
    const [kind, like] = [kinds[first!]!, likeOf[block]!];
    const set = sets.get(`${kind} ${like}`) ?? [];
    if (kind >= 0) sets.set(`${kind} ${like}`, set);
    set.push(block);
  });
  const direction = problem.reversed ? -1 : 1;
  const byNumber = (a: number, b: number): number => direction * (blocks[a]![0]! - blocks[b]![0]!);
  return [...sets.values()].filter(({ length }) => length > 1).map((set) => set.sort(byNumber));
}
