import type { Project } from './project.ts';

/**
 * For each job that lasts, a set of jobs around it of which no two can overlap: one waits for the end of the other, or
 * both together need more of something than there is. Long jobs join first.
 *
 * @source Mingozzi, Maniezzo, Ricciardelli and Bianco, An exact algorithm for the resource-constrained project
 *         scheduling problem, Management Science 44 (1998) 714-729, bound LB3 (from memory).
 */
export function setsOneAtATime(project: Project): number[][] {
  const { durations } = project;
  const apart = apartOf(project);
  const longestFirst = [...durations.keys()]
    .filter((job) => durations[job]! > 0)
    .sort((a, b) => durations[b]! - durations[a]!);
  return longestFirst.map((first) => {
    const set = [first];
    for (const job of longestFirst) if (set.every((member) => apart[member]![job])) set.push(job);
    return set;
  });
}

/** For each two jobs whether they can never overlap; a job is not apart from itself. */
function apartOf(project: Project): boolean[][] {
  const jobs = [...project.durations.keys()];
  const apart = jobs.map((job) => jobs.map((other) => job !== other && compete(project, job, other)));
  for (const job of jobs) {
    for (const other of endedBefore(project, job)) apart[job]![other] = apart[other]![job] = true;
  }
  return apart;
}

function compete({ needs, capacities }: Project, job: number, other: number): boolean {
  return needs[job]!.some(({ resource, count }) =>
    needs[other]!.some((need) => need.resource === resource && need.count + count > capacities[resource]!),
  );
}

/** The jobs that have ended when a job starts, by lags alone. */
function endedBefore({ waits, durations }: Project, job: number): number[] {
  const since = new Float64Array(job).fill(-Infinity);
  for (let at = job; at >= 0; at--) {
    for (const { job: other, least } of waits[at]!) {
      since[other] = Math.max(since[other]!, (at === job ? 0 : since[at]!) + least);
    }
  }
  return [...since.keys()].filter((other) => since[other]! >= durations[other]!);
}
