import type { Basis } from '../ground/ground.ts';
import { freeFirst, row, take } from './row.ts';

/** For each job the jobs of its block that it pushes. None is pushed in a circle: it starts later, or has a later index. */
export function pushedWithin({ prepared, earliest }: Basis): readonly (readonly number[])[] {
  const { outOf, blockOf, durations } = prepared;
  const isLater = (a: number, b: number): boolean =>
    earliest[a]! > earliest[b]! || (earliest[a] === earliest[b] && a > b);
  return durations.map((_, job) =>
    outOf[job]!.filter(({ to, least }) => blockOf[to] === blockOf[job] && least >= 0 && isLater(to, job)).map(
      ({ to }) => to,
    ),
  );
}

/** The jobs of a block in the order in which they are placed: by rank, but none before one that must come earlier. */
export function orderWithin(
  block: readonly number[],
  rank: ArrayLike<number>,
  pushed: readonly (readonly number[])[],
): readonly number[] {
  if (block.length === 1) return block;
  const inLine = block.toSorted((a, b) => rank[a]! - rank[b]!);
  const pending = new Map<number, number>();
  for (const job of block) for (const next of pushed[job]!) pending.set(next, (pending.get(next) ?? 0) + 1);
  const placeOf = new Map(inLine.map((job, place) => [job, place]));
  const ready = row(block.length);
  for (const job of block) if (!pending.has(job)) take(ready, placeOf.get(job)!);
  const order: number[] = [];
  for (let place = freeFirst(ready); place >= 0; place = freeFirst(ready)) {
    order.push(inLine[place]!);
    for (const next of pushed[inLine[place]!]!) {
      pending.set(next, pending.get(next)! - 1);
      if (pending.get(next) === 0) take(ready, placeOf.get(next)!);
    }
  }
  return order;
}
