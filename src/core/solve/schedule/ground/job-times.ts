import { finish, fit, longestStretch, openHours, openMinutes, startFor, type OpenHours } from './calendar.ts';
import type { ScheduleProblem } from '../problem.ts';

/** When one job may start, and when it then ends. All three functions rise with their argument. */
export interface JobTimes {
  /** The earliest start that the job's calendar allows, not before a minute. `Infinity`: none. */
  start(from: number): number;
  /** The end that goes with an allowed start. */
  end(start: number): number;
  /** No allowed start before this minute ends as late as `end`. */
  startFor(end: number): number;
  /** The most minutes between start and end. */
  readonly longest: number;
  /** Whether some start may exist at all. */
  readonly possible: boolean;
  /** The period of its calendar: 1 where it has none, `Infinity` where it does not repeat. */
  readonly every: number;
}

/** The times of every job of a problem. */
export function jobTimes(problem: ScheduleProblem): JobTimes[] {
  const calendars = (problem.calendars ?? []).map(openHours);
  return problem.durations.map((minutes, job) => {
    const hours = calendars[problem.calendarOf?.[job] ?? -1];
    if (!hours) return atAnyTime(minutes);
    if (problem.startsOnly?.[job]) return startedWhileOpen(hours, minutes);
    if (problem.endsOnly?.[job]) return endedWhileOpen(hours, minutes);
    return problem.splits?.[job] && minutes > 0
      ? doneWhileOpen(hours, minutes)
      : inOneStretch(hours, minutes);
  });
}

function atAnyTime(minutes: number): JobTimes {
  return { ...unbroken(minutes), start: (from) => from, possible: true, every: 1 };
}

function inOneStretch(hours: OpenHours, minutes: number): JobTimes {
  return {
    ...unbroken(minutes),
    start: (from) => fit(hours, from, minutes),
    possible: hours.stretches.length > 0 && minutes <= longestStretch(hours),
    every: hours.every ?? Infinity,
  };
}

function startedWhileOpen(hours: OpenHours, minutes: number): JobTimes {
  return { ...inOneStretch(hours, 1), ...unbroken(minutes) };
}

/** The last minute lies in the calendar, whatever comes before it. */
function endedWhileOpen(hours: OpenHours, minutes: number): JobTimes {
  return {
    ...startedWhileOpen(hours, minutes),
    start: (from) => fit(hours, from + minutes - 1, 1) - minutes + 1,
  };
}

function doneWhileOpen(hours: OpenHours, minutes: number): JobTimes {
  return {
    ...inOneStretch(hours, 1),
    end: (start) => finish(hours, start, minutes),
    startFor: (end) => startFor(hours, end, minutes),
    longest: hours.every ? (Math.ceil(minutes / openMinutes(hours)) + 1) * hours.every : Infinity,
  };
}

function unbroken(minutes: number): Pick<JobTimes, 'end' | 'startFor' | 'longest'> {
  return { end: (start) => start + minutes, startFor: (end) => end - minutes, longest: minutes };
}
