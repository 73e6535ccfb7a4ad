import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import type { PlanSettings } from '../../src/core/plan/demand.ts';
import type { PlannedSchedule } from '../../src/core/plan/result.ts';
import { type CalendarEvent, planIcs } from '../../src/exports/plan-ics.ts';
import { showEvents } from '../../src/showing/schedule/show-events.ts';
import { deferral } from '../../src/showing/safety/deferral.ts';
import { safetyWords } from '../../src/words/safety.ts';
import { aProgram, planOf } from '../core/plan/a-workspace.ts';
import { gelatinRoom } from '../core/plan/gelatin-block.ts';

const moment: CalendarEvent = { id: 'ready.block', title: 'Ready', from: 29_500_000 };

function eventsOf(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  return calendar.getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));
}

function calendarOf(settings: Partial<PlanSettings>, wanted = 4) {
  const plan = planOf(gelatinRoom, [{ guide: 'needle-block', wanted }], settings);
  const events = showEvents(plan, plan.schedule as PlannedSchedule, gelatinRoom);
  return planIcs(events, gelatinRoom.program, '2026-11-25');
}

// RFC 5545 (2009)
describe('a calendar', () => {
  it('has lines that end in CR LF, none above 75 octets, and loses nothing by it (3.1)', () => {
    const title = `Größe – 150 × 100 mm, ${'würzig; \\ '.repeat(30)}𝄞${'é'.repeat(90)}`;
    const text = planIcs([{ ...moment, title }], aProgram(), '2026-11-25');
    const lines = text.split('\r\n');
    expect(lines.at(-1)).toBe('');
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    for (const line of lines) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
    expect(eventsOf(text)[0]!.summary).toBe(title);
  });

  it('escapes commas, semicolons, backslashes and line ends (3.3.11), also in its name', () => {
    const name = 'Skills, room; A\nEND:VCALENDAR';
    const text = planIcs(
      [{ ...moment, title: 'a,b;c\\d', notes: 'one\ntwo' }],
      aProgram({ name }),
      '2026-11-25',
    );
    expect(text).toContain('SUMMARY:a\\,b\\;c\\\\d\r\n');
    expect(text).toContain('DESCRIPTION:one\\ntwo\r\n');
    expect(text.match(/^END:VCALENDAR/gm)).toHaveLength(1);
    expect(eventsOf(text)[0]!.description).toBe('one\ntwo');
  });

  it('whatever an author writes stays within its own property, and comes back', () => {
    const piece = fc.oneof(
      fc.constantFrom(
        '\n',
        '\nEND:VEVENT\nBEGIN:VEVENT',
        ';',
        ',',
        '\\',
        '\\n',
        ':',
        '"',
        '\t',
        ' ',
        '𝄞',
        'é',
        '\u2028',
      ),
      fc
        .string({ unit: 'grapheme', maxLength: 40 })
        .map((text) => text.replace(/[\0-\x08\x0b-\x1f\x7f]/g, '')),
    );
    const text = fc.array(piece, { maxLength: 12 }).map((pieces) => pieces.join(''));
    fc.assert(
      fc.property(text, text, text, (name, title, notes) => {
        const calendar = planIcs([{ ...moment, title, notes }], aProgram({ name }), '2026-11-25');
        expect(calendar.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
        const lines = calendar.split('\r\n');
        expect(lines.filter((line) => new TextEncoder().encode(line).length > 75)).toEqual([]);
        expect(lines.filter((line) => /^(BEGIN|END):/.test(line))).toHaveLength(4);
        const events = eventsOf(calendar);
        expect(events).toHaveLength(1);
        expect(events[0]!.summary ?? '').toBe(title);
        expect(events[0]!.description ?? '').toBe(notes);
      }),
    );
  });

  it('stamps every event with the day of the plan, and asks no clock (3.8.7.2)', () => {
    const text = calendarOf({ start: '2026-11-26T09:00' });
    expect(new Set(text.match(/^DTSTAMP:.*$/gm))).toEqual(new Set(['DTSTAMP:20261125T000000Z']));
    expect(text).toBe(calendarOf({ start: '2026-11-26T09:00' }));
  });

  it('has times in UTC, and no end of a moment, which keeps nobody busy', () => {
    const text = planIcs([moment, { ...moment, id: 'work.x', until: 29_500_030 }], aProgram(), '2026-11-25');
    // 29 500 000 min = 20 486 d 2 h 40 min after 1970-01-01
    expect(text.match(/^DT(START|END):.*$/gm)).toEqual([
      'DTSTART:20260202T024000Z',
      'DTSTART:20260202T024000Z',
      'DTEND:20260202T031000Z',
    ]);
    expect(text.match(/^TRANSP:.*$/gm)).toEqual(['TRANSP:TRANSPARENT', 'TRANSP:OPAQUE']);
  });

  it('names its events by where the guides are published, else by the program', () => {
    const uid = (program: Parameters<typeof planIcs>[1]) =>
      eventsOf(planIcs([moment], program, '2026-11-25'))[0]!.uid;
    expect(uid(aProgram({ address: 'https://skills.example.org/guides' }))).toBe(
      'ready.block@skills.example.org',
    );
    expect(uid(aProgram())).toBe('ready.block@quillmoor-skills-room.invalid');
  });
});

describe('the calendar of a plan', () => {
  const events = eventsOf(calendarOf({ start: '2026-11-26T09:00' }));

  it('has orders, deliveries, the work of each builder, and when all is ready', () => {
    const titles = events.map(({ summary }) => summary);
    expect(titles.slice(0, 2)).toEqual(['Order from a craft shop', 'Delivery from a craft shop']);
    expect(events[0]!.description).toContain('2 × 500 g');
    expect(titles).toContain('Needle block: Melt, all 4, builder 1');
    expect(titles.filter((title) => title.endsWith('4 models ready'))).toHaveLength(1);
  });

  it('says with the work what can hurt there, most severe first, and who has the last word', () => {
    const caution = { steps: ['melt'], avoid: ['wear heat-proof gloves'] };
    const guide = gelatinRoom.guides['needle-block']!;
    const careful: typeof gelatinRoom = {
      ...gelatinRoom,
      materials: {
        ...gelatinRoom.materials,
        'gelatin-powder': { ...gelatinRoom.materials['gelatin-powder']!, hazards: ['H319'] },
      },
      guides: {
        'needle-block': {
          ...guide,
          cautions: [
            { ...caution, id: 'dust', signal: 'caution', hazard: 'powder flies', harm: 'it stings' },
            { ...caution, id: 'hot', signal: 'warning', hazard: 'hot gel sticks', harm: 'it burns' },
          ],
        },
      },
    };
    const plan = planOf(careful, [{ guide: 'needle-block', wanted: 4 }], { start: '2026-11-26T09:00' });
    const shown = showEvents(plan, plan.schedule as PlannedSchedule, careful);
    const notes = (id: string) => shown.find((event) => event.id.startsWith(id))!.notes!;
    expect(notes('work.needle-block.melt').split('\n')).toEqual([
      'WARNING: Hot gel sticks. It burns. Wear heat-proof gloves.',
      'CAUTION: Powder flies. It stings. Wear heat-proof gloves.',
      'Gelatin powder: Causes serious eye irritation (H319)',
      `${safetyWords.trainingOnly} ${deferral(careful.program).inFull}`,
    ]);
    expect(notes('order')).toContain('Gelatin powder: 2 × 500 g. Causes serious eye irritation (H319)');
  });

  it('gives each event a name of its own, the same when it is made again', () => {
    const uids = events.map(({ uid }) => uid);
    expect(new Set(uids).size).toBe(uids.length);
    expect(eventsOf(calendarOf({ start: '2026-11-26T09:00', builders: 1 })).map(({ uid }) => uid)[0]).toBe(
      uids[0],
    );
    const later = eventsOf(calendarOf({ start: '2026-12-03T09:00' })).map(({ uid }) => uid);
    expect(later.filter((uid) => uids.includes(uid))).toEqual([]);
  });
});
