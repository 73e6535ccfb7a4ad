import { Bug } from '../diagnostic.ts';
import type { IsoDate } from '../model/values.ts';

/** Whether a text is a day of the calendar: `2026-02-28`, but not `2026-02-30`. */
export function isDay(text: string): boolean {
  const parts = partsOf(text);
  return parts !== undefined && isoDate(daysBefore(...parts)) === text;
}

/** Days since 1970-01-01, which is 0. @throws {Bug} For a text that is no day. */
export function dayNumber(day: IsoDate): number {
  const parts = partsOf(day);
  if (!parts || !isDay(day)) throw new Bug('no such day', { day });
  return daysBefore(...parts);
}

function partsOf(text: string): [year: number, month: number, day: number] | undefined {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  return found ? [Number(found[1]), Number(found[2]), Number(found[3])] : undefined;
}

/**
 * Days from 1970-01-01 to a day of the Gregorian calendar. Years begin in March, so that the leap day is the last.
 *
 * @source Howard Hinnant, "chrono-Compatible Low-Level Date Algorithms" (2014), days_from_civil; from memory.
 */
function daysBefore(year: number, month: number, day: number): number {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146_097 + dayOfEra - 719_468;
}

/** The day so many days after 1970-01-01. @source As `daysBefore`: civil_from_days. */
export function isoDate(days: number): IsoDate {
  const shifted = days + 719_468;
  const era = Math.floor(shifted / 146_097);
  const dayOfEra = shifted - era * 146_097;
  const leapDays =
    Math.floor(dayOfEra / 1460) - Math.floor(dayOfEra / 36_524) + Math.floor(dayOfEra / 146_096);
  const yearOfEra = Math.floor((dayOfEra - leapDays) / 365);
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const day = dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1;
  const month = ((marchMonth + 2) % 12) + 1;
  return dayText(yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, day);
}

function dayText(year: number, month: number, day: number): IsoDate {
  return [String(year).padStart(4, '0'), twoDigits(month), twoDigits(day)].join('-');
}

function twoDigits(number: number): string {
  return String(number).padStart(2, '0');
}

/** 0 is Monday. 1970-01-01 was a Thursday. */
export function weekdayOf(days: number): number {
  return (((days + 3) % 7) + 7) % 7;
}

/** The same day so many months later; the last day of a month that is shorter: 31 January + 1 is 28 February. */
export function addMonths(day: IsoDate, months: number): IsoDate {
  const [year, month, dayOfMonth] = partsOf(isoDate(dayNumber(day)))!;
  const count = year * 12 + month - 1 + months;
  const [toYear, toMonth] = [Math.floor(count / 12), (((count % 12) + 12) % 12) + 1];
  const lastDay =
    daysBefore(toYear + (toMonth === 12 ? 1 : 0), (toMonth % 12) + 1, 1) - daysBefore(toYear, toMonth, 1);
  return dayText(toYear, toMonth, Math.min(dayOfMonth, lastDay));
}
