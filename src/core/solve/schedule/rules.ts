import type { Ground } from './ground.ts';

/** An order of all jobs, first in line first. */
export type Line = readonly number[];

/** Lines of jobs to begin with, each by another idea of what is urgent. Ties go by kind, then by index. */
export const rules: readonly ((ground: Ground) => Line)[] = [
  modelByModel,
  stepByStep,
  latestStart,
  latestFinish,
];

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

/** What could start earliest. */
function stepByStep(ground: Ground): Line {
  return lineBy(ground, (job) => ground.earliest[job]!);
}

/** What has most before it until everything ends. */
function latestStart(ground: Ground): Line {
  return lineBy(ground, (job) => -ground.tails[job]!);
}

/** What must end earliest if nothing is to end later. */
function latestFinish({ prepared, ...rest }: Ground): Line {
  return lineBy({ prepared, ...rest }, (job) => prepared.durations[job]! - rest.tails[job]!);
}

function lineBy({ prepared }: Ground, urgency: (job: number) => number): Line {
  const { durations, kinds } = prepared;
  return durations
    .map((_, job) => job)
    .sort((a, b) => urgency(a) - urgency(b) || kinds[a]! - kinds[b]! || a - b);
}
