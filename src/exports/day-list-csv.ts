import { isoDate } from '../core/time/day.ts';
import { clockTime } from '../core/time/iso-time.ts';
import { type ZoneTable, wallOf } from '../core/time/zone.ts';
import { exportWords } from '../words/exports.ts';
import { type Cell, csvText } from './csv-text.ts';

/** A stretch of work of one builder, or of a machine, on the clock of its plan. Texts are finished. */
export interface WorkRow {
  readonly from: number;
  readonly until: number;
  readonly builder?: number;
  readonly guide: string;
  readonly work: string;
  /** When what it leaves has waited its time. */
  readonly waitsUntil?: number;
}

/** Days of the reference week count from its start; dates are those of a zone. */
export interface DayClock {
  readonly clock: 'reference-week' | 'dated';
  readonly start: number;
}

const minutesADay = 1440;

/** Who does what when, as a table: a row for each stretch of each builder, so that each can filter their own. */
export function dayListCsv(rows: readonly WorkRow[], clock: DayClock, zone: ZoneTable): string {
  const { days: header } = exportWords;
  const at = (minute: number): readonly [day: Cell, time: Cell] => momentCells(minute, clock, zone);
  return csvText(
    Object.values(header),
    rows.map(({ from, until, builder, guide, work, waitsUntil }) => [
      ...at(from),
      ...at(until),
      builder,
      guide,
      work,
      ...(waitsUntil === undefined ? [undefined, undefined] : at(waitsUntil)),
    ]),
  );
}

/** `2026-11-30`, or the number of the day; `09:05`. */
function momentCells(minute: number, { clock, start }: DayClock, zone: ZoneTable): readonly [Cell, Cell] {
  const wall = (of: number): number => (clock === 'dated' ? wallOf(zone, of) : of);
  const day = Math.floor(wall(minute) / minutesADay);
  const first = Math.floor(wall(start) / minutesADay);
  return [clock === 'dated' ? isoDate(day) : day - first + 1, clockTime(wall(minute) - day * minutesADay)];
}
