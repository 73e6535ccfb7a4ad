import type { Prepared } from '../ground/prepared.ts';
import type { ScheduleProblem } from '../problem.ts';
import { distances, type Distances } from './distances.ts';
import { twinOrder } from './twins.ts';

/** A problem as moments and the least times between them: the start of each job, the begin and the end of all. */
export interface Network {
  readonly durations: readonly number[];
  readonly uses: readonly Use[];
  readonly distances: Distances;
  /** Minute 0 of the network is `from` of the problem. */
  readonly begin: number;
  readonly end: number;
}

/** A resource and the jobs that use some of it for some time. */
export interface Use {
  readonly resource: number;
  readonly capacity: number;
  /** Greatest needs first. */
  readonly jobs: readonly number[];
  /** By job. */
  readonly needs: readonly number[];
}

/** j comes at least so long after i. */
export type Arc = readonly [i: number, j: number, least: number];

/** The network of a problem in which nobody has to come after himself. */
export function networkOf(problem: ScheduleProblem, prepared: Prepared): Network {
  const { durations, from, releases, deadlines, outOf } = prepared;
  const [begin, end] = [durations.length, durations.length + 1];
  const arcs = durations.flatMap((minutes, job): Arc[] => [
    ...outOf[job]!.map(({ to, least }): Arc => [job, to, least]),
    [begin, job, releases[job]! - from],
    [job, begin, from + minutes - deadlines[job]!],
    [job, end, minutes],
  ]);
  const network = { durations, uses: usesOf(problem, prepared), distances: distances(end + 1), begin, end };
  for (const arc of [[begin, end, 0] as const, ...arcs, ...twinOrder(problem)])
    network.distances.settle(...arc);
  return network;
}

function usesOf({ capacities }: ScheduleProblem, prepared: Prepared): Use[] {
  return capacities.map((capacity, resource) => {
    const needs = prepared.needs.map((own) => own.find(({ usage }) => usage === resource)?.count ?? 0);
    const jobs = [...needs.keys()].filter((job) => needs[job]! > 0).sort((a, b) => needs[b]! - needs[a]!);
    return { resource, capacity, needs, jobs };
  });
}

/** The earliest start of a job, and the latest, by all that is settled so far. */
export function earliest({ distances: { at, size }, begin }: Network, job: number): number {
  return at[begin * size + job]!;
}
export function latest({ distances: { at, size }, begin }: Network, job: number): number {
  return -at[job * size + begin]!;
}
