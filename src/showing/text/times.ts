import type { Duration, IsoDate, Keeping } from '../../core/model/values.ts';
import type { ZoneTable } from '../../core/time/zone.ts';
import { type Exact, ceil, exact } from '../../core/quantity/exact.ts';
import { dayNumber, isoDate, weekdayOf } from '../../core/time/day.ts';
import { secondsOf } from '../../core/time/minutes.ts';
import { wallOf } from '../../core/time/zone.ts';
import { calendarWords } from '../../words/calendar.ts';
import { timeUnits } from '../../words/units.ts';
import { counted, fill, noBreak } from './fill.ts';
import { showCount, showRatio } from './numbers.ts';

const minutesADay = 1440;
/** Below this many minutes a time is said in hours: "24 h", "47 h 30 min"; from here on in days: "2 d 2 h". */
const saidInHours = 2 * minutesADay;
/** Below this many seconds a time keeps its seconds: "90 s" is "1 min 30 s". */
const saidInSeconds = 600;

/** "40 min", "1 h 40 min", "2 d 20 h". Whole minutes, zero or more. */
export function showMinutes(minutes: number): string {
  const days = minutes < saidInHours ? 0 : Math.floor(minutes / minutesADay);
  const rest = minutes - days * minutesADay;
  return inUnits(
    [
      [days, timeUnits.day],
      [Math.floor(rest / 60), timeUnits.hour],
      [rest % 60, timeUnits.minute],
    ],
    timeUnits.minute,
  );
}

/** Time of people's work: hours, however many. "297 h 20 min" */
export function showWork(minutes: number): string {
  return inUnits(
    [
      [Math.floor(minutes / 60), timeUnits.hour],
      [minutes % 60, timeUnits.minute],
    ],
    timeUnits.minute,
  );
}

/** A length of time as its guide says it: short ones with their seconds, longer ones up to a whole minute. */
export function showSeconds(seconds: Exact): string {
  const whole = ceil(seconds);
  if (whole >= saidInSeconds) return showMinutes(ceil(seconds.div(60)));
  return inUnits(
    [
      [Math.floor(whole / 60), timeUnits.minute],
      [whole % 60, timeUnits.second],
    ],
    timeUnits.second,
  );
}

/** "40 s", "3 working days". */
export function showDuration(duration: Duration): string {
  return 'workingDays' in duration
    ? counted(duration.workingDays, 'working-day')
    : showSeconds(secondsOf(duration));
}

/** How long something keeps: as a duration, or "6 months". */
export function showKeeping(keeping: Keeping): string {
  if ('workingDays' in keeping) return showDuration(keeping);
  if ('seconds' in keeping) return inDays(exact(keeping.seconds)) ?? showDuration(keeping);
  const months = exact(keeping.months);
  return months.equals(1) ? counted(1, 'month') : `${showRatio(months)}${noBreak}months`;
}

/** "5 days", of a time that is so many whole days. */
function inDays(seconds: Exact): string | undefined {
  const days = seconds.div(60 * minutesADay);
  return days.d === 1n && days.n > 0n ? counted(Number(days.n), 'day') : undefined;
}

/** Those units that are not zero, large to small; "0 min" where all are. */
function inUnits(parts: readonly (readonly [n: number, unit: string])[], smallest: string): string {
  const said = parts.filter(([n]) => n > 0).map(([n, unit]) => `${showCount(n)}${noBreak}${unit}`);
  return said.join(noBreak) || `0${noBreak}${smallest}`;
}

/** What turns the minutes of a schedule into days and times: the reference week, or a zone's clock. */
export interface Clock {
  readonly kind: 'reference-week' | 'dated';
  /** The minute from which days are counted, and whose year goes without saying. */
  readonly start: number;
  readonly zone: ZoneTable;
}

/** "day 2" or "Mon 30 November". */
export function showDay(minute: number, clock: Clock): string {
  const day = dayOf(minute, clock);
  return clock.kind === 'dated'
    ? showDate(isoDate(day), isoDate(dayOf(clock.start, clock)))
    : fill(calendarWords.referenceDay, { n: showCount(day - dayOf(clock.start, clock) + 1) });
}

/** "09:00", by the clock on the wall. */
export function showTime(minute: number, clock: Clock): string {
  const time = wallMinute(minute, clock) - dayOf(minute, clock) * minutesADay;
  return `${twoDigits(Math.floor(time / 60))}:${twoDigits(time % 60)}`;
}

/** "day 2, 09:00" or "Mon 30 November, 09:00". */
export function showMoment(minute: number, clock: Clock): string {
  return fill(calendarWords.moment, { day: showDay(minute, clock), time: showTime(minute, clock) });
}

/** The time alone where the day is one that the reader already knows. */
export function showMomentFrom(known: number, minute: number, clock: Clock): string {
  return dayOf(known, clock) === dayOf(minute, clock) ? showTime(minute, clock) : showMoment(minute, clock);
}

/** Days of the wall clock: since 1970, or since the Monday of the reference week. */
export function dayOf(minute: number, clock: Clock): number {
  return Math.floor(wallMinute(minute, clock) / minutesADay);
}

/** "Mon 30 November"; with its year where that is not the year of `near`. */
export function showDate(date: IsoDate, near?: IsoDate): string {
  const [year = '', month = '', day = ''] = date.split('-');
  const texts = {
    weekday: calendarWords.days[weekdayOf(dayNumber(date))]!,
    day: String(Number(day)),
    month: calendarWords.months[Number(month) - 1]!,
  };
  return near?.startsWith(year)
    ? fill(calendarWords.date, texts)
    : fill(calendarWords.dateWithYear, { ...texts, year });
}

function wallMinute(minute: number, clock: Clock): number {
  return clock.kind === 'dated' ? wallOf(clock.zone, minute) : minute;
}

const twoDigits = (n: number): string => String(n).padStart(2, '0');
