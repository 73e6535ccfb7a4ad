import { isoDate } from './day.ts';
import type { ZoneTable } from './zone.ts';
import { offsetAt } from './zone.ts';

const day = 1440;

/** A UTC minute on the clock of its zone, by ISO 8601: `2026-11-30T09:00+00:00`. */
export function isoTime(zone: ZoneTable, utcMinute: number): string {
  const offset = offsetAt(zone, utcMinute);
  const wall = utcMinute + offset;
  const ofDay = wall - Math.floor(wall / day) * day;
  return `${isoDate(Math.floor(wall / day))}T${clockTime(ofDay)}${offset < 0 ? '-' : '+'}${clockTime(Math.abs(offset))}`;
}

/** Minutes of a day as `09:05`. */
export function clockTime(minutes: number): string {
  return [Math.floor(minutes / 60), minutes % 60].map((part) => String(part).padStart(2, '0')).join(':');
}

/** A UTC minute in UTC itself, with its seconds: `2026-11-30T09:00:00Z`. */
export function utcTime(utcMinute: number): string {
  const today = Math.floor(utcMinute / day);
  return `${isoDate(today)}T${clockTime(utcMinute - today * day)}:00Z`;
}
