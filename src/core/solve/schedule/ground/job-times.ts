import { finish, fit, openHours, openMinutes, startFor, type OpenHours } from './calendar.ts';
import type { ScheduleProblem } from '../problem.ts';

/** When one job may start, and when it then ends. All three functions rise with their argument. */
export interface JobTimes {
  /** The earliest start that the job's calendar allows, not before a minute. `Infinity`: none. */
  readonly start: (from: number) => number;
  /** The end that goes with an allowed start. */
  readonly end: (start: number) => number;
  /** No allowed start before this minute ends as late as `end`. */
  readonly startFor: (end: number) => number;
  /** The most minutes between start and end. */
  readonly longest: number;
  /** The period of its calendar: 1 where it has none, `Infinity` where it does not repeat. */
  readonly every: number;
}

/** The times of every job of a problem; jobs that are alike share theirs. */
export function jobTimes(problem: ScheduleProblem): JobTimes[] {
  const calendars = (problem.calendars ?? []).map(openHours);
  const known = new Map<string, JobTimes>();
  return problem.durations.map((minutes, job) => {
    const calendar = problem.calendarOf?.[job] ?? -1;
    const hours = calendars[calendar];
    const way = hours ? wayOf(problem, job) : 'any';
    const key = `${way} ${minutes} ${calendar}`;
    const times = known.get(key) ?? timesOf(minutes, hours!, ways[way]!(minutes, hours!));
    known.set(key, times);
    return times;
  });
}

/** How a job lies in its hours. */
function wayOf({ durations, startsOnly, endsOnly, splits }: ScheduleProblem, job: number): string {
  if (startsOnly?.[job]) return 'begun';
  if (endsOnly?.[job]) return 'ended';
  return splits?.[job] && durations[job]! > 0 ? 'split' : 'unbroken';
}

const ways: Readonly<Record<string, (minutes: number, hours: OpenHours) => Partial<JobTimes>>> = {
  any: () => ({ start: (from) => from, every: 1 }),
  unbroken: (minutes, hours) => ({ start: (from) => fit(hours, from, minutes) }),
  /** Only its first minute must be open. */
  begun: () => ({}),
  /** Only its last minute must be. */
  ended: (minutes, hours) => ({ start: (from) => fit(hours, from + minutes - 1, 1) - minutes + 1 }),
  split: (minutes, hours) => ({
    end: (start) => finish(hours, start, minutes),
    startFor: (end) => startFor(hours, end, minutes),
    longest: hours.every ? (Math.ceil(minutes / openMinutes(hours)) + 1) * hours.every : Infinity,
  }),
};

/** All of one form, whatever is said of them, so that none is slow to call. */
function timesOf(minutes: number, hours: OpenHours, own: Partial<JobTimes>): JobTimes {
  return {
    start: own.start ?? ((from) => fit(hours, from, 1)),
    end: own.end ?? ((start) => start + minutes),
    startFor: own.startFor ?? ((end) => end - minutes),
    longest: own.longest ?? minutes,
    every: own.every ?? hours.every ?? Infinity,
  };
}
