import type { IsoDate } from '../../core/model/values.ts';
import { calendarWords } from '../../words/calendar.ts';
import { libraryWords } from '../../words/library.ts';
import { fill } from './fill.ts';

/** "3 August 2026": a day of a record, which no reader sets and no plan moves. */
export function showRecordDate(date: IsoDate): string {
  const [year = '', month = '', day = ''] = date.split('-');
  return fill(libraryWords.date, {
    day: String(Number(day)),
    month: calendarWords.months[Number(month) - 1]!,
    year,
  });
}
