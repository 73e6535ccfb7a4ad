import { isoDate } from '../core/time/day.ts';
import { clockTime } from '../core/time/iso-time.ts';
import { type ZoneTable, wallOf } from '../core/time/zone.ts';
import { exportWords } from '../words/exports.ts';
import { type Cell, csvText } from './csv-text.ts';

/** A stretch of a session, in minutes from its beginning. Texts are finished. */
export interface SessionRow {
  readonly from: number;
  readonly until: number;
  readonly what: string;
  readonly round?: number;
  readonly group?: number;
  readonly station?: { readonly id: string; readonly name: string };
}

const minutesADay = 1440;

/**
 * Who is where when, as a table: a row for each item of the agenda, which everybody has, and for each group in each
 * round of a circuit. Times are `h:mm` from the beginning of the session, or with a date those of the clock.
 *
 * @param begins  Minutes since 1970 in UTC, with the zone whose clock is meant.
 */
export function timetableCsv(
  rows: readonly SessionRow[],
  begins?: { readonly at: number; readonly zone: ZoneTable },
): string {
  const { timetable: header, everybody, rest } = exportWords;
  return csvText(
    Object.values(header),
    rows.map(({ from, until, what, round, group, station }) => [
      ...momentCells(from, begins),
      momentCells(until, begins)[1],
      what,
      round,
      group ?? everybody,
      group === undefined ? undefined : (station?.name ?? rest),
    ]),
  );
}

function momentCells(
  minute: number,
  begins: { readonly at: number; readonly zone: ZoneTable } | undefined,
): readonly [day: Cell, time: Cell] {
  if (!begins) return [undefined, clockTime(minute).replace(/^0(?=\d:)/, '')];
  const wall = wallOf(begins.zone, begins.at + minute);
  const day = Math.floor(wall / minutesADay);
  return [isoDate(day), clockTime(wall - day * minutesADay)];
}
