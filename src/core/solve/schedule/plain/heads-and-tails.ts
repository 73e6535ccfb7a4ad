import type { Project } from './project.ts';

/** The earliest start of each job if nobody had to share anything. */
export function heads({ releases, waits }: Project): Float64Array {
  const heads = releases.slice();
  waits.forEach((before, job) => {
    for (const { job: other, least } of before) heads[job] = Math.max(heads[job]!, heads[other]! + least);
  });
  return heads;
}

/** The least time from the start of each job to the end of everything. */
export function tails({ durations, waits }: Project): Float64Array {
  const tails = durations.slice();
  for (let job = tails.length - 1; job >= 0; job--) {
    for (const { job: other, least } of waits[job]!) {
      tails[other] = Math.max(tails[other]!, least + tails[job]!);
    }
  }
  return tails;
}
