import { finish, fit, openHours, type OpenHours } from './calendar.ts';
import { endOfCycles } from './cycles.ts';
import type { Basis } from './ground.ts';
import { isEnd, jobAt } from './moments.ts';
import type { Obstacle } from '../problem.ts';

/**
 * The earliest minute at which any schedule can end: by lags and calendars alone, and for each resource by the work
 * that it has to do.
 *
 * @returns The bound, or what proves that there is no schedule at all.
 */
export function lowerBound(ground: Basis): number | { impossible: Obstacle } {
  const { prepared, earliest, tails } = ground;
  let bound = prepared.from;
  earliest.forEach((start, job) => {
    bound = Math.max(bound, prepared.times[job]!.end(start), start + tails[job]!);
  });
  for (let resource = 0; resource < ground.problem.capacities.length; resource++) {
    const loads = loadsOf(ground, resource);
    const hours = commonHours(ground, resource);
    const end = endOfWork(loads, ground.problem.capacities[resource]!, hours);
    const latest = loads.reduce((most, { deadline }) => Math.max(most, deadline), -Infinity);
    const jobs = [...new Set(loads.flatMap(({ jobs }) => jobs))];
    if (end.work === Infinity) return { impossible: { because: 'calendar', jobs, resource } };
    if (end.work > latest) return { impossible: { because: 'deadline', jobs, resource } };
    bound = Math.max(bound, end.all, endOfCycles(ground, resource) + afterHolds(ground, resource));
  }
  return bound;
}

/** Work for one resource: so many resource-minutes, none of them before `head`; then `tail` until everything ends. */
interface Load {
  readonly jobs: readonly number[];
  readonly minutes: number;
  readonly head: number;
  readonly tail: number;
  readonly deadline: number;
}

function loadsOf(ground: Basis, resource: number): Load[] {
  const { prepared, earliest, ways } = ground;
  const jobs = prepared.durations.length;
  const loads: Load[] = [];
  prepared.needs.forEach((needs, job) => {
    const need = needs.find(({ usage }) => usage === resource);
    if (!need) return;
    const minutes = need.count * prepared.durations[job]!;
    const deadline = prepared.deadlines[job]!;
    loads.push({ jobs: [job], minutes, head: earliest[job]!, tail: after(jobs + job, ground), deadline });
  });
  prepared.holds.forEach(({ usage, count, from, to }, hold) => {
    if (usage !== resource) return;
    const head = Math.min(...from.map((moment) => earliestOf(moment, ground)));
    const tail = Math.min(...to.map((moment) => after(moment, ground)));
    loads.push({
      jobs: [...from, ...to].map((moment) => jobAt(moment, jobs)),
      minutes: count * Math.max(0, ...ways[hold]!.map((way) => way.minutes)),
      head,
      tail,
      deadline: Infinity,
    });
  });
  return loads;
}

function earliestOf(moment: number, { prepared, earliest }: Basis): number {
  const job = jobAt(moment, earliest.length);
  return isEnd(moment, earliest.length) ? prepared.times[job]!.end(earliest[job]!) : earliest[job]!;
}

/** The least time from a moment until everything ends. */
function after(moment: number, { prepared, tails }: Basis): number {
  const job = jobAt(moment, tails.length);
  return isEnd(moment, tails.length) ? Math.max(0, tails[job]! - prepared.times[job]!.longest) : tails[job]!;
}

/** The least time from the end of a hold of a resource until everything ends. */
function afterHolds(ground: Basis, resource: number): number {
  const ends = ground.prepared.holds.flatMap(({ usage, to }) => (usage === resource ? to : []));
  const times = ends.map((moment) => after(moment, ground));
  return times.reduce((least, time) => Math.min(least, time), times[0] ?? 0);
}

/**
 * The earliest end of all loads, and of everything, if the resource never idles: for each head, the loads that cannot
 * begin before it take their minutes one after the other from there.
 */
function endOfWork(
  loads: readonly Load[],
  capacity: number,
  hours?: OpenHours,
): { work: number; all: number } {
  let [minutes, tail, work, all] = [0, Infinity, -Infinity, -Infinity];
  for (const load of loads.toSorted((a, b) => b.head - a.head)) {
    minutes += load.minutes;
    tail = Math.min(tail, load.tail);
    if (minutes === 0) continue;
    const end = worked(load.head, Math.ceil(minutes / capacity), hours);
    work = Math.max(work, end);
    all = Math.max(all, end + tail);
  }
  return { work, all };
}

function worked(from: number, minutes: number, hours?: OpenHours): number {
  return hours ? finish(hours, fit(hours, from, 1), minutes) : from + minutes;
}

/** The hours within which all work on a resource lies; `undefined` where there are none in common. */
function commonHours({ problem, prepared }: Basis, resource: number): OpenHours | undefined {
  const jobs = problem.durations.map((_, job) => job);
  const users = jobs.filter((job) => prepared.needs[job]!.some(({ usage }) => usage === resource));
  const calendars = new Set(
    users.map((job) =>
      problem.startsOnly?.[job] || problem.endsOnly?.[job] ? -1 : (problem.calendarOf?.[job] ?? -1),
    ),
  );
  const [calendar = -1] = calendars;
  const isHeld = prepared.holds.some(({ usage }) => usage === resource);
  if (calendars.size !== 1 || calendar < 0 || isHeld) return undefined;
  return openHours(problem.calendars![calendar]!);
}
