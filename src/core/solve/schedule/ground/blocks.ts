import type { Tie } from './ties.ts';

/**
 * Jobs that are tied to each other both ways (a least and a greatest lag), block by block. Most blocks are one job. A
 * block comes after all blocks that any of its jobs waits for.
 *
 * @param outOf  For each job the ties that begin at it.
 * @source Tarjan, Depth-first search and linear graph algorithms, SIAM Journal on Computing 1 (1972); from memory.
 *         Written with a stack of its own, so that long chains do no harm.
 */
export function blocks(outOf: readonly (readonly Tie[])[]): number[][] {
  const found: number[][] = [];
  const number = outOf.map(() => -1);
  const lowest = outOf.map(() => -1);
  const isOpen = outOf.map(() => false);
  const open: number[] = [];
  let seen = 0;

  const enter = (job: number): void => {
    number[job] = lowest[job] = seen++;
    isOpen[job] = true;
    open.push(job);
  };
  const leave = (job: number): void => {
    if (lowest[job] !== number[job]) return;
    const block = open.splice(open.lastIndexOf(job));
    for (const member of block) isOpen[member] = false;
    found.push(block.sort((a, b) => a - b));
  };

  for (let root = outOf.length - 1; root >= 0; root--) {
    if (number[root] !== -1) continue;
    enter(root);
    const path = [{ job: root, next: 0 }];
    for (let here = path.at(-1); here; here = path.at(-1)) {
      const tie = outOf[here.job]![here.next++];
      if (!tie) {
        leave(here.job);
        path.pop();
        const above = path.at(-1);
        if (above) lowest[above.job] = Math.min(lowest[above.job]!, lowest[here.job]!);
      } else if (number[tie.to] === -1) {
        enter(tie.to);
        path.push({ job: tie.to, next: 0 });
      } else if (isOpen[tie.to]) {
        lowest[here.job] = Math.min(lowest[here.job]!, number[tie.to]!);
      }
    }
  }
  return found.reverse();
}
