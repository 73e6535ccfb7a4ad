import { parse } from 'csv-parse/sync';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { benchwright, folderWith, soundWorkspace } from './on-a-bench.ts';

/** 12 trainees in groups of 4 go round two stations, and a third group rests. */
const module = `---
title: First knots
objectives: []
cohort:
  ratio: 6
  group: 4
  people:
    - id: trainees
      count: 12
    - id: seniors
      count: 2
      as: [raters]
  instructors: 2
session:
  booked: 2 h
  agenda:
    - id: brief
      takes: 10 min
      script: [training-only, Cords go back into the box.]
    - id: circuit
      what: Two stations
      stations: [tying, watching]
    - id: debrief
      takes: 15 min
    - id: clear-up
      takes: 10 min
      script: [pockets, sharps-count]
    - id: slack
      takes: the rest
stations:
  - id: tying
    seats: 4
    takes: 20 min
    change-over: 5 min
    led: yes
    models:
      - guide: knot-board
        uses: 10
        share: mixed
  - id: watching
    seats: 4
    takes: 20 min
    change-over: 5 min
---
Tie.
`;
const folder = folderWith({ ...soundWorkspace, 'modules/first-knots/module.md': module });
const planned = (...args: readonly string[]) => benchwright(['plan', 'first-knots', ...args], { folder });

interface Session {
  begins?: string;
  booked: number;
  groups: { size: number }[];
  agenda: { id: string; start: number; end: number; rounds?: { start: number; at: object }[] }[];
  models: { models: number; spares: number }[];
  instructors: object;
}
async function jsonOf(...args: readonly string[]) {
  const { status, out, err } = await planned(...args, '--format', 'json');
  expect([status, err.match(/^error/m)]).toEqual([0, null]);
  return JSON.parse(out) as {
    format: string;
    session: Session;
    demand: { wanted: number; spares: number; made: number }[];
    schedule: { ready: string };
  };
}

// Worked by hand: 12 trainees x 10 uses of boards that last 20 are 6 boards; 4 at once. 3 groups at 2 stations are
// 3 rounds: 3 x 20 + 2 x 5 = 70 min from minute 10 on.
describe('plan MODULE', () => {
  it('plans the models of its session, with its groups and rounds beside', async () => {
    const { format, session, demand } = await jsonOf();
    expect(format).toBe('benchwright-plan/1');
    expect(demand[0]).toMatchObject({ wanted: 6, spares: 0, made: 6 });
    expect(session.groups.map(({ size }) => size)).toEqual([4, 4, 4]);
    expect(session.agenda.map(({ start, end }) => [start, end])).toEqual([
      [0, 10],
      [10, 80],
      [80, 95],
      [95, 105],
      [105, 120],
    ]);
    expect(session.agenda[1]!.rounds!.map(({ start, at }) => [start, at])).toEqual([
      [10, { tying: 1, watching: 2 }],
      [35, { tying: 3, watching: 1 }],
      [60, { tying: 2, watching: 3 }],
    ]);
    expect(session.instructors).toEqual({ needed: 2, there: 2 });
  });

  it('for other people, other instructors and spares', async () => {
    const { session, demand } = await jsonOf(
      ...['--people', 'trainees=20', '--people', 'seniors=3', '--instructors', '1', '--spares', '10%'],
    );
    // 20 x 10 / 20 = 10, and one spare
    expect(demand[0]).toMatchObject({ wanted: 10, spares: 1 });
    expect(session.models[0]).toMatchObject({ models: 10, spares: 1 });
    expect(session.groups).toHaveLength(5);
    expect(session.instructors).toEqual({ needed: 4, there: 1 });
  });

  it('adds the spares of the program where none are set', async () => {
    const files = { ...soundWorkspace, 'modules/first-knots/module.md': module };
    const program = `${soundWorkspace['program.yaml']}spares: 20 %\n`;
    const { out } = await benchwright(['plan', 'first-knots', '--format', 'json'], {
      folder: folderWith({ ...files, 'program.yaml': program }),
    });
    expect((JSON.parse(out) as { demand: object[] }).demand[0]).toMatchObject({ wanted: 6, spares: 2 });
  });

  it('is ready when the session begins, and says when that is', async () => {
    const { session, schedule } = await jsonOf('--ready-by', '2026-12-04T13:00');
    expect(session.begins).toBe('2026-12-04T13:00+00:00');
    expect(schedule.ready <= '2026-12-04T13:00+00:00').toBe(true);
    expect((await jsonOf('--ready-by', '2026-12-04')).session.begins).toBeUndefined();
  });

  it('refuses models that are good no longer when the session ends', async () => {
    const board = soundWorkspace['guides/knot-board/guide.md']!;
    const short = (keeps: string) =>
      folderWith({
        ...soundWorkspace,
        'guides/knot-board/guide.md': board.replace('lasts:', `keeps: [{ for: ${keeps}, at: room }]\nlasts:`),
        'modules/first-knots/module.md': module,
      });
    const statusOf = async (keeps: string) =>
      (
        await benchwright(['plan', 'first-knots', '--ready-by', '2026-12-04T13:00', '--format', 'json'], {
          folder: short(keeps),
        })
      ).status;
    // booked for 2 h; six boards of 10 min each: the first is ready 50 min before the last
    expect(await statusOf('2 h 55 min')).toBe(0);
    expect(await statusOf('1 h 55 min')).toBe(3);
  });

  it('prints the session, then the plan, in 80 columns', async () => {
    const { status, out } = await planned('--people', 'trainees=20', '--instructors', '1');
    expect(status).toBe(0);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
    const text = out.replaceAll('\u00a0', ' ');
    expect(text).toContain('20 trainees in 5 groups: 4, 4, 4, 4, 4 (practise)');
    expect(text).toContain('Too few instructors: 4 needed, 1 there.');
    expect(text).toContain('  0:10–0:30  Group 1  Group 2   Group 3, Group 4 and Group 5');
    expect(text.indexOf('Models that stand ready')).toBeLessThan(
      text.indexOf('Knot board, Plain: 10 models'),
    );
  });

  it('lists more stations than fit side by side', async () => {
    const ids = ['tying', 'watching', 'a', 'b', 'c', 'd'];
    const many = ['a', 'b', 'c', 'd'].map(
      (id) => `  - id: ${id}\n    name: A station with a long name ${id}\n    seats: 4\n    takes: 20 min\n`,
    );
    const { out } = await benchwright(['plan', 'first-knots'], {
      folder: folderWith({
        ...soundWorkspace,
        'modules/first-knots/module.md': module
          .replace('[tying, watching]', `[${ids.join(', ')}]`)
          .replace('booked: 2 h', 'booked: 3 h')
          .replace('stations:\n  - id: tying', `stations:\n${many.join('')}  - id: tying`),
      }),
    });
    expect(out).toContain('  0:10–0:30  Tying: Group 1; Watching: Group 2; A station with a long name a:');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  it('has its timetable as a table, dated or not', async () => {
    const rows = async (...args: readonly string[]) => {
      const { out } = await planned('--format', 'csv', '--list', 'timetable', ...args);
      return parse(out, { bom: true, columns: true }) as Record<string, string>[];
    };
    const undated = await rows();
    expect(undated).toHaveLength(4 + 9);
    expect(undated[3]).toEqual({
      ...{ Day: '', From: '0:10', Until: '0:30', What: 'Two stations' },
      ...{ Round: '1', Group: '3', Station: 'rest' },
    });
    expect((await rows('--ready-by', '2026-12-04T13:00'))[0]).toMatchObject({
      ...{ Day: '2026-12-04', From: '13:00', Until: '13:10', Group: 'all' },
    });
  });

  it('stands in a calendar with what is built for it', async () => {
    const { out } = await planned('--format', 'ics', '--ready-by', '2026-12-04T13:00');
    const events = new ICAL.Component(ICAL.parse(out) as unknown[])
      .getAllSubcomponents('vevent')
      .map((event) => new ICAL.Event(event));
    const ofSession = events.filter(({ uid }) => uid.startsWith('session.first-knots.'));
    expect(ofSession.map(({ summary, startDate }) => [summary, startDate.toString()])).toEqual([
      ['First knots: Brief', '2026-12-04T13:00:00Z'],
      ['First knots: Two stations, round 1', '2026-12-04T13:10:00Z'],
      ['First knots: Two stations, round 2', '2026-12-04T13:35:00Z'],
      ['First knots: Two stations, round 3', '2026-12-04T14:00:00Z'],
      ['First knots: Debrief', '2026-12-04T14:20:00Z'],
      ['First knots: Clear up', '2026-12-04T14:35:00Z'],
      ['First knots: Slack', '2026-12-04T14:45:00Z'],
    ]);
    expect(ofSession[1]!.description).toBe('Tying: Group 1\nWatching: Group 2\nRest: Group 3');
    expect(events.length).toBeGreaterThan(ofSession.length);
  });

  it('has a calendar for each group: where it is, what is said there, and nothing of the building', async () => {
    const dated = ['--format', 'ics', '--ready-by', '2026-12-04T13:00'];
    const { status, out } = await planned(...dated, '--group', '3');
    const events = new ICAL.Component(ICAL.parse(out) as unknown[])
      .getAllSubcomponents('vevent')
      .map((event) => new ICAL.Event(event));
    expect(status).toBe(0);
    expect(events.map(({ summary }) => summary)).toEqual([
      'First knots: Brief',
      'First knots: Group 3, rests',
      'First knots: Group 3, Tying',
      'First knots: Group 3, Watching',
      'First knots: Debrief',
      'First knots: Clear up',
      'First knots: Slack',
    ]);
    expect(events[0]!.description).toBe(
      'For training only, never for patient care.\nCords go back into the box.',
    );
    const fourth = await planned(...dated, '--group', '4', '--people', 'trainees=13');
    expect([fourth.status, fourth.out.includes('Group 4\\, Tying')]).toEqual([0, true]);
  });

  it('is refused for a day that is over, also where nothing is to be planned', async () => {
    const past = ['--ready-by', '2026-11-20T13:00', '--today', '2026-11-25'];
    const group = await planned('--format', 'ics', '--group', '1', ...past);
    const table = await planned('--format', 'csv', '--list', 'timetable', ...past);
    expect([group.status, group.out, table.status, table.out]).toEqual([1, '', 1, '']);
  });

  it('without models tells who is where, and that there is nothing to build', async () => {
    const without = module.replace(/ {4}models:\n(?: {6}.*\n)+/, '');
    const talk = { folder: folderWith({ ...soundWorkspace, 'modules/first-knots/module.md': without }) };
    const { status, out } = await benchwright(['plan', 'first-knots'], talk);
    expect([status, out.includes('there is nothing to build')]).toEqual([0, true]);
    const json = await benchwright(['plan', 'first-knots', '--format', 'json'], talk);
    expect(JSON.parse(json.out)).toMatchObject({ format: 'benchwright-plan/1', session: { booked: 120 } });
    const list = await benchwright(['plan', 'first-knots', '--format', 'csv'], talk);
    expect([list.status, list.out]).toEqual([3, '']);
  });
});

describe('a module whose people only try its models out', () => {
  const onlyTried = module.replace('- id: trainees\n', '- id: trainees\n      as: [try-out]\n');
  const tried = folderWith({ ...soundWorkspace, 'modules/first-knots/module.md': onlyTried });
  const plannedFor = (count: number) =>
    benchwright(['plan', 'first-knots', '--people', `trainees=${count}`, '--format', 'json'], {
      folder: tried,
    });

  it('is planned, as each of them wears out models', async () => {
    // 4 x 10 uses of boards that last 20 are 2 boards, and 4 sit at once
    const { status, out } = await plannedFor(4);
    expect(status).toBe(0);
    expect((JSON.parse(out) as { demand: object[] }).demand[0]).toMatchObject({ wanted: 4 });
  });

  it('is refused where none of them comes', async () => {
    const { status, err } = await plannedFor(0);
    expect([status, err.includes('Let at least one come of: trainees.')]).toEqual([2, true]);
  });
});

describe('a call for a module that cannot be followed says why', () => {
  it.each([
    [['--people', 'trainee=4'], 'first-knots has no people “trainee”. Did you mean trainees?'],
    [['--people', 'cooks=4'], 'first-knots has no people “cooks”. It has trainees and seniors.'],
    [['--people', 'trainees=0'], 'Nobody is left to practise in first-knots.'],
    [['--people', 'trainees'], '--people takes kinds of people'],
    [['--people', 'trainees=2,trainees=3'], '--people takes kinds of people'],
    [['--people', 'trainees=2', '--people', 'trainees=3'], '--people takes kinds of people'],
    [['--people'], '--people takes kinds of people'],
    [['--instructors', '1001'], '--instructors takes a whole number from 0 to 1,000, and not “1001”.'],
    [['--batch', '3'], 'first-knots is a module: how many models it takes follows from its people.'],
    [['--group', '1'], '--group chooses the calendar of one group, and the format is text.'],
    [['--group', '0', '--format', 'ics'], '--group takes the number of a group'],
    [
      ['--group', '4', '--format', 'ics', '--ready-by', '2026-12-04T13:00'],
      'first-knots has no group 4. It has 3 groups.',
    ],
    [
      ['--group', '1', '--format', 'ics', '--ready-by', '2026-12-04'],
      'The calendar of a group needs the time at which its session begins.',
    ],
    [
      ['--group', '1', '--format', 'ics', '--start', '2026-12-04'],
      'The calendar of a group needs the time at which its session begins.',
    ],
    [['knot-board'], 'first-knots is a module, and is planned by itself: name it alone.'],
  ])('%j', async (args, says) => {
    const { status, out, err } = await planned(...args);
    expect([status, out]).toEqual([2, '']);
    expect(err.replaceAll(/[\n\u00a0]/g, ' ')).toContain(says);
  });

  it.each([
    [['plan', 'knot-board', '--people', 'trainees=3'], '--people speaks of a module'],
    [['plan', 'knot-board', '--format', 'csv', '--list', 'timetable'], '--list timetable speaks of a module'],
    [
      ['plan', 'knot-board', '--format', 'ics', '--start', '2026-12-04', '--group', '1'],
      '--group speaks of a module',
    ],
    [['plan', 'first-knot'], 'Did you mean first-knots?'],
  ])('%j', async (args, says) => {
    const { status, err } = await benchwright(args, { folder });
    expect([status, err.includes(says)]).toEqual([2, true]);
  });

  it('a module with errors is not planned; guides beside it are', async () => {
    const broken = folderWith({
      ...soundWorkspace,
      'modules/first-knots/module.md': module.replace('booked: 2 h', 'booked: soon'),
    });
    const refused = await benchwright(['plan', 'first-knots'], { folder: broken });
    expect([refused.status, refused.out]).toEqual([1, '']);
    expect(refused.err).toContain('first-knots cannot be planned before the errors are mended.');
    expect((await benchwright(['plan', 'knot-board'], { folder: broken })).status).toBe(0);
  });
});
