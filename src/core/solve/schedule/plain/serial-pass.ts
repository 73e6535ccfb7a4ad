import { clear, profileOf, take, type Profile } from './profile.ts';
import type { Project } from './project.ts';

/** A schedule of a project: starts, and when the last job ends. */
export interface Pass {
  readonly starts: Float64Array;
  readonly end: number;
}

/**
 * Makes schedules from keys: the job with the lowest key first takes the earliest place, then the next one the
 * earliest that is left. No job goes before one that it waits for, whatever their keys.
 *
 * @source Kolisch, Serial and parallel resource-constrained project scheduling methods revisited, EJOR 90 (1996)
 *         320-333, the serial method (from memory).
 */
export function serialPass(project: Project): (keys: Float64Array) => Pass {
  const profile = profileOf(project);
  const order = Int32Array.from(project.jobs, (_, job) => job);
  return (keys) => {
    sortBy(order, lifted(keys, project));
    return placeAll(order, profile);
  };
}

function placeAll(order: Int32Array, profile: Profile): Pass {
  const { durations, releases, waits } = profile.project;
  const starts = new Float64Array(order.length);
  let end = 0;
  clear(profile);
  for (const job of order) {
    let from = releases[job]!;
    for (const wait of waits[job]!) from = Math.max(from, starts[wait.job]! + wait.least);
    starts[job] = take(profile, job, from);
    end = Math.max(end, starts[job]! + durations[job]!);
  }
  return { starts, end };
}

/** Keys that are nowhere lower than those of the jobs waited for. */
function lifted(keys: Float64Array, { waits }: Project): Float64Array {
  const raised = keys.slice();
  waits.forEach((before, job) => {
    for (const wait of before) raised[job] = Math.max(raised[job]!, raised[wait.job]!);
  });
  return raised;
}

/** Sorts jobs by their keys, then by their numbers; by insertion, since the order at hand is mostly right. */
function sortBy(order: Int32Array, keys: Float64Array): void {
  for (let at = 1; at < order.length; at++) {
    const job = order[at]!;
    let to = at;
    for (; to > 0 && comesBefore(job, order[to - 1]!, keys); to--) order[to] = order[to - 1]!;
    order[to] = job;
  }
}

function comesBefore(job: number, other: number, keys: Float64Array): boolean {
  return keys[job]! < keys[other]! || (keys[job] === keys[other] && job < other);
}
