import type { Project } from './project.ts';

/**
 * What is free of every resource from one event to the next, and after the last one for good: between `times[k]` and
 * `times[k + 1]` there is `free[k * resources + r]` of resource r.
 *
 *     times        -∞     0     4     9
 *     free of A     3     1     2     3
 *     free of B     1     1     0     1
 */
export interface Profile {
  readonly project: Project;
  readonly times: Float64Array;
  readonly free: Float64Array;
  events: number;
}

export function profileOf(project: Project): Profile {
  const most = 2 * project.jobs.length + 1;
  const free = new Float64Array(most * project.capacities.length);
  return { project, times: new Float64Array(most), free, events: 0 };
}

/** Frees everything. */
export function clear(profile: Profile): void {
  profile.times[0] = -Infinity;
  profile.free.set(profile.project.capacities);
  profile.events = 1;
}

/** Takes what a job needs for as long as it lasts, as early as there is room, not before `from`; says when it starts. */
export function take(profile: Profile, job: number, from: number): number {
  const { project, times } = profile;
  if (project.needs[job]!.length === 0) return from;
  const duration = project.durations[job]!;
  let [first, start] = [stretchOf(profile, from), from];
  for (let at = first; at < profile.events && times[at]! < start + duration; at++) {
    if (hasRoom(profile, job, at)) continue;
    first = at + 1;
    start = times[first]!;
  }
  use(profile, job, eventAt(profile, first, start), start + duration);
  return start;
}

/** The stretch between two events in which a minute lies. */
function stretchOf({ times, events }: Profile, minute: number): number {
  let [low, high] = [0, events];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (times[middle]! <= minute) low = middle;
    else high = middle;
  }
  return low;
}

function hasRoom({ project, free }: Profile, job: number, at: number): boolean {
  const needs = project.needs[job]!;
  const row = at * project.capacities.length;
  for (let n = 0; n < needs.length; n++) {
    if (free[row + needs[n]!.resource]! < needs[n]!.count) return false;
  }
  return true;
}

/** The event at a minute of a stretch; made where there is none. */
function eventAt(profile: Profile, at: number, minute: number): number {
  const { times, free, events } = profile;
  if (times[at] === minute) return at;
  const resources = profile.project.capacities.length;
  times.copyWithin(at + 2, at + 1, events);
  times[at + 1] = minute;
  free.copyWithin((at + 1) * resources, at * resources, events * resources);
  profile.events++;
  return at + 1;
}

function use(profile: Profile, job: number, first: number, until: number): void {
  const { project, times, free } = profile;
  let last = first;
  while (last + 1 < profile.events && times[last + 1]! <= until) last++;
  const end = eventAt(profile, last, until);
  for (let at = first; at < end; at++) {
    for (const { resource, count } of project.needs[job]!) {
      free[at * project.capacities.length + resource]! -= count;
    }
  }
}
