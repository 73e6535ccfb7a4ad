import { describe, expect, it } from 'vitest';
import { dayNumber, isoDate } from '../../src/core/time/day.ts';
import { offsetAt, utcOf, wallOf } from '../../src/core/time/zone.ts';
import { openStretches } from '../../src/core/time/working-hours.ts';
import { zoneTable } from '../../src/reading/zone-table.ts';
import reference from './data/dst.json' with { type: 'json' };

type Case = (typeof reference.cases)[number];
const year = { from: 2026, until: 2027 };
const table = (zone: string) => zoneTable(zone, year)!;

/** `2026-03-07T16:00`, with `:00Z` or without, as minutes of the clock it is on. */
function minuteOf(text: string): number {
  const [, day, hours, minutes] = /^(.{10})T(\d\d):(\d\d)/.exec(text)!;
  return dayNumber(day!) * 1440 + Number(hours) * 60 + Number(minutes);
}

function textOf(zone: string, utcMinute: number): string {
  const wall = wallOf(table(zone), utcMinute);
  const offset = offsetAt(table(zone), utcMinute);
  return `${isoDate(Math.floor(wall / 1440))}T${clock(((wall % 1440) + 1440) % 1440)}${offset < 0 ? '-' : '+'}${clock(Math.abs(offset))}`;
}
const clock = (minutes: number) =>
  [Math.floor(minutes / 60), minutes % 60].map((part) => String(part).padStart(2, '0')).join(':');

/** What each kind of case of the file claims, by a field that only it has. */
const claims: Readonly<Record<string, (found: Case) => void>> = {
  transitionsUtc: ({ zone, transitionsUtc, offsetsAfter }) => {
    const changes = table(zone).changes.slice(1);
    expect(changes.map(([minute]) => minute)).toEqual(transitionsUtc!.map(minuteOf));
    expect(changes.map(([minute]) => textOf(zone, minute).slice(-6))).toEqual(offsetsAfter);
  },
  addHours: ({ zone, start, addHours, result }) => {
    expect(textOf(zone, utcOf(table(zone), minuteOf(start!)) + addHours! * 60)).toBe(result);
  },
  addDays: ({ zone, start, addDays, result }) => {
    expect(textOf(zone, utcOf(table(zone), minuteOf(start!) + addDays! * 1440))).toBe(result);
  },
  wall: ({ zone, wall, note }) => {
    const shown = /(?:\d\d:\d\d)?-\d\d:\d\d$/.exec(note!)![0];
    expect(textOf(zone, utcOf(table(zone), minuteOf(wall!)))).toContain(shown);
  },
  hoursInDay: ({ zone, day, hoursInDay }) => {
    const always = {
      days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'],
      hours: [[0, 1440]],
      closed: [],
    } as const;
    const stretches = openStretches(always, dayNumber(day!), 1, table(zone));
    expect(stretches.map(([from, to]) => (to - from) / 60)).toEqual([hoursInDay]);
  },
};

// IANA time zone database, as the Temporal polyfill and Python's zoneinfo both read it; the two rules for a wall clock
// that is skipped or comes twice: Temporal's "compatible", and RFC 5545, 3.3.5.
describe('clocks change as the zone database says', () => {
  it.each(reference.cases)('%j', (found) => {
    const kinds = Object.keys(claims).filter((kind) => kind in found);
    expect(kinds).toHaveLength(1);
    claims[kinds[0]!]!(found);
  });
});

it('knows a zone from none', () => {
  expect(zoneTable('Mars/Olympus')).toBeUndefined();
  expect(zoneTable('+01:00')).toBeUndefined();
  expect(zoneTable('')).toBeUndefined();
});
