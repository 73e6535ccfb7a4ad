import { jobAt } from './moments.ts';
import type { Prepared } from './prepared.ts';
import type { ScheduleProblem } from '../problem.ts';

/**
 * For each block a number that it shares with all blocks like it: as long, bound alike within, in need of the same.
 * Where one finds no room, the others need not look.
 */
export function alike(problem: ScheduleProblem, prepared: Omit<Prepared, 'likeOf'>): number[] {
  const numbers = new Map<string, number>();
  return prepared.blocks.map((block) => {
    const likeness = block.map((job) => likenessOf(job, block, problem, prepared)).join(';');
    const known = numbers.get(likeness) ?? numbers.size;
    numbers.set(likeness, known);
    return known;
  });
}

/** Everything that decides where a job finds room, but for its lags to jobs outside its block. */
function likenessOf(
  job: number,
  block: readonly number[],
  problem: ScheduleProblem,
  { needs, apart, holds, holdsOf, outOf, blockOf }: Omit<Prepared, 'likeOf'>,
): string {
  const ties = outOf[job]!.filter(({ to }) => blockOf[to] === blockOf[job]);
  return [
    problem.durations[job],
    problem.calendarOf?.[job],
    ...[problem.splits, problem.startsOnly, problem.endsOnly].map((has) => Number(has?.[job] ?? false)),
    ...needs[job]!.map(({ usage, count }) => `u${usage}*${count}`),
    ...apart[job]!.map(({ mine, before, after }) => `x${mine}-${before}+${after}`),
    ...holdsOf[job]!.map((hold) => {
      const { usage, count, from } = holds[hold]!;
      return `h${usage}*${count}${from.some((moment) => jobAt(moment, problem.durations.length) === job) ? 'from' : 'to'}`;
    }),
    ...ties.map(
      ({ to, length, fromEnd, toEnd }) => `l${block.indexOf(to)}+${length}${String(fromEnd)}${String(toEnd)}`,
    ),
  ].join();
}
