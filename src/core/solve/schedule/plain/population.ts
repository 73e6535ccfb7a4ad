import type { Pass } from './serial-pass.ts';

/** Lets a schedule join, unless it is there already. Where they are more than `most`, the oldest of the worst leaves. */
export function join(population: Pass[], child: Pass, most: number): void {
  if (population.some((member) => isSame(member, child))) return;
  population.push(child);
  if (population.length <= most) return;
  const worst = Math.max(...population.map(({ end }) => end));
  population.splice(
    population.findIndex(({ end }) => end === worst),
    1,
  );
}

function isSame(one: Pass, other: Pass): boolean {
  return one.end === other.end && one.starts.every((start, job) => start === other.starts[job]);
}
