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
  for (const [resource, loads] of loadsOf(ground).entries()) {
    const end = endOfWork(loads, ground.problem.capacities[resource]!, commonHours(ground, loads));
    const latest = loads.reduce((most, { deadline }) => Math.max(most, deadline), -Infinity);
    if (end.work === Infinity || end.work > latest) {
      const because = end.work === Infinity ? 'calendar' : 'deadline';
      return { impossible: { because, jobs: [...new Set(loads.flatMap(({ jobs }) => jobs))], resource } };
    }
    bound = Math.max(bound, end.all, endOfCycles(ground, resource) + afterHolds(loads));
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
  readonly isHold: boolean;
}

/** Resource by resource. */
function loadsOf(ground: Basis): Load[][] {
  const { problem, prepared, earliest, ways } = ground;
  const jobs = prepared.durations.length;
  const loads = problem.capacities.map((): Load[] => []);
  prepared.needs.forEach((needs, job) => {
    const of = { jobs: [job], head: earliest[job]!, tail: after(jobs + job, ground), isHold: false };
    for (const { usage, count } of needs) {
      const minutes = count * prepared.durations[job]!;
      loads[usage]!.push({ ...of, minutes, deadline: prepared.deadlines[job]! });
    }
  });
  prepared.holds.forEach(({ usage, count, from, to }, hold) => {
    loads[usage]!.push({
      jobs: [...from, ...to].map((moment) => jobAt(moment, jobs)),
      minutes: count * Math.max(0, ...ways[hold]!.map((way) => way.minutes)),
      head: Math.min(...from.map((moment) => earliestOf(moment, ground))),
      tail: Math.min(...to.map((moment) => after(moment, ground))),
      deadline: Infinity,
      isHold: true,
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

/** The least time from the end of a hold until everything ends. */
function afterHolds(loads: readonly Load[]): number {
  const tails = loads.filter(({ isHold }) => isHold).map(({ tail }) => tail);
  return tails.reduce((least, tail) => Math.min(least, tail), tails[0] ?? 0);
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
function commonHours({ problem }: Basis, loads: readonly Load[]): OpenHours | undefined {
  const { calendars, calendarOf, startsOnly, endsOnly } = problem;
  const hoursOf = ({ jobs: [job], isHold }: Load): number =>
    isHold || startsOnly?.[job!] || endsOnly?.[job!] ? -1 : (calendarOf?.[job!] ?? -1);
  const [calendar = -1, ...others] = new Set(loads.map(hoursOf));
  return others.length > 0 || calendar < 0 ? undefined : openHours(calendars![calendar]!);
}
