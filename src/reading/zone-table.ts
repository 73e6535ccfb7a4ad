import { Temporal } from 'temporal-polyfill';
import type { ZoneTable } from '../core/time/zone.ts';

/** The years a table covers where nobody says others: fixed, so that the same folder gives the same bytes any day. */
export const zoneYears = { from: 2024, until: 2040 } as const;

/**
 * The offsets of a time zone as plain data, for the core and the browser, which have no zone database.
 *
 * @param zone  An IANA name: `Europe/London`. `undefined` comes back for a name that is none.
 * @param years  From the first day of `from` to the last before `until`, UTC, and two days more at either end.
 */
export function zoneTable(
  zone: string,
  years: { readonly from: number; readonly until: number } = zoneYears,
): ZoneTable | undefined {
  if (!isZone(zone)) return undefined;
  const first = Temporal.ZonedDateTime.from(`${years.from}-01-01T00:00Z[UTC]`).subtract({ days: 2 });
  const end = Temporal.ZonedDateTime.from(`${years.until}-01-01T00:00Z[UTC]`).add({ days: 2 });
  const changes = [rowOf(first.withTimeZone(zone)), ...transitions(first.withTimeZone(zone), end)];
  return { zone, changes, until: end.epochMilliseconds / 60_000 };
}

/** A name of the zone database, and not a bare offset such as `+01:00`, which knows no summer time. */
function isZone(zone: string): boolean {
  if (!/^[A-Za-z]/.test(zone)) return false;
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(zone);
    return true;
  } catch {
    return false;
  }
}

function transitions(first: Temporal.ZonedDateTime, end: Temporal.ZonedDateTime) {
  const rows: (readonly [utcMinute: number, offset: number])[] = [];
  let next = first.getTimeZoneTransition('next');
  while (next && Temporal.ZonedDateTime.compare(next, end) < 0) {
    rows.push(rowOf(next));
    next = next.getTimeZoneTransition('next');
  }
  return rows;
}

function rowOf(moment: Temporal.ZonedDateTime): readonly [utcMinute: number, offset: number] {
  return [moment.epochMilliseconds / 60_000, moment.offsetNanoseconds / 60_000_000_000];
}
