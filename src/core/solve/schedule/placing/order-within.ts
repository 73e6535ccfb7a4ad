import { leastFirst } from '../../least-first.ts';
import type { Ground } from '../ground/ground.ts';

/** The jobs of a block in the order in which they are placed: by rank, but none before one that must come earlier. */
export function orderWithin(
  block: readonly number[],
  rank: readonly number[],
  ground: Ground,
): readonly number[] {
  if (block.length === 1) return block;
  const next = new Map(block.map((job) => [job, followersWithin(job, ground)]));
  const pending = new Map(block.map((job) => [job, 0]));
  for (const job of [...next.values()].flat()) pending.set(job, pending.get(job)! + 1);
  const ready = leastFirst<number>((a, b) => rank[a]! - rank[b]!);
  for (const job of block) if (pending.get(job) === 0) ready.add(job);
  const order: number[] = [];
  for (let job = ready.next(); job !== undefined; job = ready.next()) {
    order.push(job);
    for (const follower of next.get(job)!) {
      pending.set(follower, pending.get(follower)! - 1);
      if (pending.get(follower) === 0) ready.add(follower);
    }
  }
  return order;
}

/** Jobs of the same block that a job pushes: never back in a circle, since all go to a later start or a later index. */
function followersWithin(job: number, { prepared, earliest }: Ground): number[] {
  const { outOf, blockOf } = prepared;
  const isLater = (other: number): boolean =>
    earliest[other]! > earliest[job]! || (earliest[other] === earliest[job] && other > job);
  return outOf[job]!.filter(({ to, least }) => blockOf[to] === blockOf[job] && least >= 0 && isLater(to)).map(
    ({ to }) => to,
  );
}
