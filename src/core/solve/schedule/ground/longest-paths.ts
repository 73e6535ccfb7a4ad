import type { Prepared } from './prepared.ts';
import type { Tie } from './ties.ts';

/**
 * Jobs that wait for each other in a circle: each must come so long after the one before it that the first would have
 * to come after itself. `undefined` where there is no such circle.
 *
 *     melt --- pour at least 60 min later --> pour
 *          <-- pour at most 45 min later ----          60 - 45 > 0: impossible
 *
 * @source Bellman-Ford; Cormen, Leiserson, Rivest and Stein, Introduction to Algorithms (from memory).
 */
export function positiveCircle(prepared: Prepared): number[] | undefined {
  for (const block of prepared.blocks) {
    const circle = circleIn(block, tiesWithin(block, prepared));
    if (circle) return circle;
  }
  return undefined;
}

function tiesWithin(block: readonly number[], { outOf, blockOf }: Prepared): Tie[] {
  return block.flatMap((job) => outOf[job]!.filter(({ to }) => blockOf[to] === blockOf[job]));
}

function circleIn(block: readonly number[], within: readonly Tie[]): number[] | undefined {
  const earliest = new Map(block.map((job) => [job, 0]));
  const because = new Map<number, number>();
  let pushed: number | undefined;
  for (let round = 0; round <= block.length; round++) {
    pushed = undefined;
    for (const { from, to, least } of within) {
      if (earliest.get(from)! + least <= earliest.get(to)!) continue;
      earliest.set(to, earliest.get(from)! + least);
      because.set(to, from);
      pushed = to;
    }
    if (pushed === undefined) return undefined;
  }
  return circleBehind(pushed!, because, block.length);
}

/** The circle that is met when one goes back from a job to what pushed it, often enough; the least index first. */
function circleBehind(job: number, because: ReadonlyMap<number, number>, steps: number): number[] {
  let at = job;
  for (let step = 0; step < steps; step++) at = because.get(at)!;
  const circle = [at];
  for (let before = because.get(at)!; before !== at; before = because.get(before)!) circle.unshift(before);
  const first = circle.indexOf(Math.min(...circle));
  return [...circle.slice(first), ...circle.slice(0, first)];
}

/**
 * For each job the least time from its start to the end of everything, by lags and durations alone. No job may wait
 * for itself.
 *
 * @param horizon  Where given, all is to end by then, and a job with an earlier deadline counts as if as much followed it.
 *
 *     |--- job ---|..lag..|---- next ----|
 *     <------------- tail -------------->
 */
export function tails(prepared: Prepared, horizon = -Infinity): number[] {
  const tails = prepared.durations.map(
    (minutes, job) => minutes + Math.max(0, horizon - prepared.deadlines[job]!),
  );
  for (const block of prepared.blocks.toReversed()) {
    for (let changed = true; changed;) {
      changed = false;
      for (const job of block.toReversed()) {
        const longest = Math.max(
          tails[job]!,
          ...prepared.outOf[job]!.map(({ to, least }) => least + tails[to]!),
        );
        changed ||= longest > tails[job]!;
        tails[job] = longest;
      }
    }
  }
  return tails;
}

/**
 * The least time from the start of one job to the starts of all that it pushes, by lags alone.
 *
 * @param shortest  Ties of less are not followed.
 */
export function distancesFrom(
  source: number,
  outOf: Prepared['outOf'],
  shortest = -Infinity,
): Map<number, number> {
  const distances = new Map([[source, 0]]);
  const waiting = [source];
  for (let at = 0; at < waiting.length; at++) {
    const job = waiting[at]!;
    for (const { to, least } of outOf[job]!) {
      const distance = distances.get(job)! + least;
      if (least < shortest || distance <= (distances.get(to) ?? -Infinity)) continue;
      distances.set(to, distance);
      waiting.push(to);
    }
  }
  return distances;
}
