import ical, { ICalEventTransparency } from 'ical-generator';
import type { Program } from '../core/model/program.ts';
import type { IsoDate } from '../core/model/values.ts';
import { asId } from '../core/slug.ts';
import { dayNumber } from '../core/time/day.ts';
import { utcTime } from '../core/time/iso-time.ts';

/** Something that happens, or is done, at a time. Its texts are finished. */
export interface CalendarEvent {
  /** Says what it is, in its plan and in every other: of letters, digits, dots and hyphens. */
  readonly id: string;
  readonly title: string;
  readonly notes?: string;
  /** Minutes since 1970 in UTC. */
  readonly from: number;
  /** Left out of a moment, which keeps nobody busy. */
  readonly until?: number;
}

/**
 * Events as an iCalendar file for any calendar: times in UTC, and the same identifiers whenever the same plan is
 * exported, so that a calendar which has an event replaces it.
 *
 * @param today  Stands as the time at which the file was made: no clock is asked.
 * @source RFC 5545 (2009): 3.1 lines of 75 octets that end in CR LF, 3.3.11 escapes, 3.8.4.7 UID, 3.8.7.2 DTSTAMP.
 */
export function planIcs(events: readonly CalendarEvent[], program: Program, today: IsoDate): string {
  const calendar = ical({ prodId: '//Benchwright//Plan//EN', name: escaped(program.name) });
  const stamp = utcTime(dayNumber(today) * 1440);
  for (const { id, title, notes, from, until } of events) {
    calendar.createEvent({
      id: `${id}@${hostOf(program)}`,
      stamp,
      start: utcTime(from),
      summary: title,
      transparency: until === undefined ? ICalEventTransparency.TRANSPARENT : ICalEventTransparency.OPAQUE,
      ...(until === undefined ? {} : { end: utcTime(until) }),
      ...(notes === undefined ? {} : { description: notes }),
    });
  }
  return `${calendar.toString()}\r\n`;
}

/** Where the guides are published; of a program that is nowhere, its name under a domain that nobody can have. */
function hostOf({ address, name }: Program): string {
  const host = /^https?:\/\/([^/:?#]+)/i.exec(address ?? '')?.[1];
  return host ?? `${asId(name) || 'program'}.invalid`;
}

/** The name of a calendar is the one text that the library does not escape. */
function escaped(text: string): string {
  return text.replace(/[\\;,]/g, '\\$&').replace(/\r\n|\r|\n/g, '\\n');
}
