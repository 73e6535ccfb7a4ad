import { isoDate } from './day.ts';
import type { ZoneTable } from './zone.ts';
import { offsetAt } from './zone.ts';

const day = 1440;

/** A UTC minute on the clock of its zone, by ISO 8601: `2026-11-30T09:00+00:00`. */
export function isoTime(zone: ZoneTable, utcMinute: number): string {
  const offset = offsetAt(zone, utcMinute);
  const wall = utcMinute + offset;
  const ofDay = wall - Math.floor(wall / day) * day;
  return `${isoDate(Math.floor(wall / day))}T${clock(ofDay)}${offset < 0 ? '-' : '+'}${clock(Math.abs(offset))}`;
}

/** Minutes as `09:05`. */
function clock(minutes: number): string {
  return [Math.floor(minutes / 60), minutes % 60].map((part) => String(part).padStart(2, '0')).join(':');
}
