import type { Ground } from '../ground/ground.ts';

/** An order of all jobs, first in line first. */
export type Line = readonly number[];

/** For each job its place in a line. */
export function rankOf(line: Line): Int32Array {
  const rank = new Int32Array(line.length);
  for (let place = 0; place < line.length; place++) rank[line[place]!] = place;
  return rank;
}

/** Lines of jobs to begin with, each by another idea of what is urgent. Ties go by kind, then by index. */
export function* rules(ground: Ground): Generator<Line> {
  yield modelByModel(ground);
  yield latestStart(ground);
  yield latestFinish(ground);
  const shares = sharesOfKind(ground.prepared.kinds);
  const most = 1 / shares.reduce((least, share) => (share > 0 ? Math.min(least, share) : least), 1);
  for (let waves = 1; waves <= most; waves += Math.ceil(waves / 3)) yield inWaves(ground, shares, waves);
}

/** Goes on with what has been begun: the jobs that follow the last one come next. */
function modelByModel({ prepared }: Ground): Line {
  const { blocks, followers } = prepared;
  const pending = blocks.map(() => 0);
  for (const follower of followers.flat()) pending[follower]! += 1;
  const waiting = blocks.map((_, block) => block).filter((block) => pending[block] === 0);
  waiting.sort((a, b) => blocks[b]![0]! - blocks[a]![0]!);
  const line: number[] = [];
  for (let block = waiting.pop(); block !== undefined; block = waiting.pop()) {
    line.push(...blocks[block]!);
    for (const follower of followers[block]!.toReversed())
      if (--pending[follower]! === 0) waiting.push(follower);
  }
  return line;
}

/** What must start earliest if all deadlines are to be kept and nothing is to end later than it must. */
function latestStart(ground: Ground): Line {
  return lineBy(ground, (job) => -ground.urgency[job]!);
}

/** What must end earliest for that. */
function latestFinish(ground: Ground): Line {
  return lineBy(ground, (job) => ground.prepared.durations[job]! - ground.urgency[job]!);
}

/**
 * So many waves, each with its share of the jobs of every kind; in a wave, what could start earliest comes first.
 *
 *     4 models in 2 waves    saw 1 2, drill 1 2, paint 1 2,   saw 3 4, drill 3 4, paint 3 4
 */
function inWaves(ground: Ground, shares: readonly number[], waves: number): Line {
  return lineBy(
    ground,
    (job) => Math.floor(shares[job]! * waves),
    (job) => ground.earliest[job]!,
  );
}

/** For each job which part of its kind comes before it: from 0 to below 1. */
function sharesOfKind(kinds: readonly number[]): number[] {
  const before: number[] = [];
  const counts = new Map<number, number>();
  kinds.forEach((kind, job) => {
    before[job] = counts.get(kind) ?? 0;
    counts.set(kind, before[job]! + 1);
  });
  return kinds.map((kind, job) => before[job]! / counts.get(kind)!);
}

function lineBy({ prepared }: Ground, ...urgencies: ((job: number) => number)[]): Line {
  const { durations, kinds } = prepared;
  const urgent = urgencies.map((urgency) => Float64Array.from(durations, (_, job) => urgency(job)));
  const compare = (a: number, b: number): number => {
    for (const of of urgent) if (of[a] !== of[b]) return of[a]! - of[b]!;
    return kinds[a]! - kinds[b]!;
  };
  return [...durations.keys()].sort(compare);
}
