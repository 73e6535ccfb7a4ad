import { parse } from 'csv-parse/sync';
import ICAL from 'ical.js';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Module } from '../../src/core/model/module.ts';
import type { Workspace } from '../../src/core/model/workspace.ts';
import { cohortOf } from '../../src/core/plan/cohort/cohort.ts';
import { courseJsonLd } from '../../src/exports/course-json-ld.ts';
import { planIcs } from '../../src/exports/plan-ics.ts';
import { scoreSheetCsv, surveyCsv } from '../../src/exports/result-templates.ts';
import { timetableCsv } from '../../src/exports/timetable-csv.ts';
import { readWorkspace } from '../../src/index.ts';
import { courseTexts } from '../../src/showing/session/course-texts.ts';
import { sessionEvents } from '../../src/showing/session/session-events.ts';
import { timetableOf } from '../../src/showing/session/timetable.ts';
import { teachingWords } from '../../src/words/teaching.ts';
import { aModule } from '../core/plan/cohort/a-module.ts';

let workspace: Workspace;
let day: Module;
beforeAll(async () => {
  workspace = (await readWorkspace('content/quillmoor')).workspace!;
  day = workspace.modules['emergency-procedures-day']!;
});

// 2026-12-04T13:00 in London is 13:00 UTC
const begins = Date.UTC(2026, 11, 4, 13) / 60_000;

describe('a timetable', () => {
  it('as a table has every group once in every round, at a station of its own', () => {
    const cohort = cohortOf(day, workspace.guides);
    const text = timetableCsv(timetableOf(day, cohort, workspace), {
      at: begins,
      zone: workspace.program.zone,
    });
    const rows = parse(text, { bom: true, columns: true }) as Record<string, string>[];
    const round = rows.filter((row) => row['Round'] === '2');
    expect(round.map((row) => row['Group'])).toEqual(['1', '2', '3', '4']);
    expect(new Set(round.map((row) => row['Station'])).size).toBe(4);
    expect(round[0]).toMatchObject({ Day: '2026-12-04', From: '13:50', Until: '14:15' });
  });

  it('keeps to the clock of the program where that is put back in the night', () => {
    // Europe/London: 2026-10-25, 02:00 is 01:00 again. Two items of an hour from 00:30 on end at 01:30.
    const rows = [{ from: 60, until: 120, what: 'Night' }];
    const at = Date.UTC(2026, 9, 24, 23, 30) / 60_000;
    const [row] = parse(timetableCsv(rows, { at, zone: workspace.program.zone }), {
      bom: true,
      columns: true,
    }) as Record<string, string>[];
    expect(row).toMatchObject({ Day: '2026-10-25', From: '01:30', Until: '01:30' });
  });

  // RFC 5545 (2009), 3.8.4.7: every event has an identifier of its own.
  it('as a calendar is a group’s or an instructor’s, and no event has the identifier of another', () => {
    const cohort = cohortOf(day, workspace.guides);
    const of = (group?: number) => {
      const text = planIcs(
        sessionEvents(day, cohort, workspace, begins, group),
        workspace.program,
        '2026-11-25',
      );
      expect(text).toContain('DTSTAMP:20261125T000000Z');
      return new ICAL.Component(ICAL.parse(text) as unknown[])
        .getAllSubcomponents('vevent')
        .map((event) => new ICAL.Event(event));
    };
    const views = [of(), of(1), of(2), of(3), of(4)];
    // seven items, the circuit in four rounds
    expect(views.map((events) => events.length)).toEqual([10, 10, 10, 10, 10]);
    const ids = views.flat().map(({ uid }) => uid);
    expect(new Set(ids).size).toBe(ids.length);
    const clearUp = views[0]!.find(({ summary }) => summary.includes('Clear up'));
    expect(clearUp!.description).toContain('Count blades and needles');
    const [, , second] = views;
    expect(second!.slice(2, 6).map(({ summary }) => summary)).toEqual([
      'Emergency procedures, half a day: Group 2, Front of neck',
      'Emergency procedures, half a day: Group 2, Vein under ultrasound',
      'Emergency procedures, half a day: Group 2, Fixing the drain',
      'Emergency procedures, half a day: Group 2, Chest drain',
    ]);
  });
});

describe('empty tables for results', () => {
  const header = (text: string | undefined) => (parse(text!, { bom: true }) as string[][])[0];

  it('a score sheet has a column for each item, rating and penalty, and no row', () => {
    expect(parse(scoreSheetCsv(day)!, { bom: true })).toHaveLength(1);
    expect(header(scoreSheetCsv(day))).toEqual([
      ...['person', 'group', 'rater', 'seconds'],
      ...['item.above-the-rib', 'item.finger-sweep', 'item.membrane-found', 'item.tube-in-time'],
      ...['item.tip-in-view', 'item.stitch-holds', 'rating.flow', 'penalty.1'],
    ]);
    expect(scoreSheetCsv(aModule())).toBeUndefined();
  });

  it('a score sheet names on paper what its columns are called', () => {
    const { person, group, rater, taken } = teachingWords.score;
    const columns = header(scoreSheetCsv(day))!.slice(0, 4);
    const paper = [person, group, rater, taken].map((words) => words.toLowerCase());
    expect(columns.filter((column, i) => !paper[i]!.includes(column))).toEqual([]);
  });

  it('a survey has a column for each question that is asked then, of those people', () => {
    const question = { ask: 'How sure?', of: ['trainees'], asked: ['before', 'after'] as const };
    const module = aModule({
      surveys: [
        { ...question, id: 'sure' },
        { ...question, id: 'told', of: [], asked: ['after'] },
      ],
    });
    expect(header(surveyCsv(module, 'before'))).toEqual(['person', 'people', 'answer.sure']);
    expect(header(surveyCsv(module, 'after'))).toEqual(['person', 'people', 'answer.sure', 'answer.told']);
    expect(header(surveyCsv(module, 'after', 'raters'))).toEqual(['person', 'people', 'answer.told']);
    expect(surveyCsv(module, 'before', 'raters')).toBeUndefined();
  });
});

it('schema.org: a course with what it teaches and assesses, and resources that are part of it', () => {
  const address = 'https://skills.example.org/guides/trainees/modules/emergency-procedures-day/';
  const [course, ...resources] = courseJsonLd({ ...courseTexts(day, workspace), address }, workspace.program)[
    '@graph'
  ] as Record<string, unknown>[];
  expect(course).toMatchObject({
    '@type': 'Course',
    '@id': `${address}#course`,
    name: 'Emergency procedures, half a day',
    educationalLevel: 'trainees in their second year',
    coursePrerequisites: ['Knots and first stitches', 'A needle under ultrasound'],
    timeRequired: 'PT3H',
    isPartOf: { '@type': 'WebSite', url: workspace.program.address },
  });
  expect(course!['teaches']).toContain('find the membrane by touch and open it, tube in place in 90 s');
  expect(course!['assesses']).toHaveLength(4);
  expect(resources[0]).toEqual({
    '@type': 'LearningResource',
    name: 'Four landmarks',
    learningResourceType: 'read',
    timeRequired: 'PT10M',
    isPartOf: { '@id': `${address}#course` },
  });
  expect(resources).toHaveLength(1 + 4);
});
