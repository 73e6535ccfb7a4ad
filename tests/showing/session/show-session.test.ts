import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { readWorkspace } from '../../../src/index.ts';
import type { Module } from '../../../src/core/model/module.ts';
import type { Workspace } from '../../../src/core/model/workspace.ts';
import { type CohortSettings, cohortOf } from '../../../src/core/plan/cohort/cohort.ts';
import { sessionQuestion } from '../../../src/core/plan/cohort/session-question.ts';
import { makePlan } from '../../../src/core/plan/plan.ts';
import { showPlan } from '../../../src/showing/plan/show-plan.ts';
import { showLives } from '../../../src/showing/session/show-lives.ts';
import { showSession } from '../../../src/showing/session/show-session.ts';
import type { ShownSession } from '../../../src/showing/session/shown-session.ts';
import { aModule, aStation } from '../../core/plan/cohort/a-module.ts';
import { aGuide, time } from '../../core/plan/a-workspace.ts';
import { bench } from '../bench.ts';
import { leavesOf } from '../leaves.ts';

const item = (id: string, more: object = {}) => ({ id, stations: [], script: [], ...more });
const circuit = ['a', 'b', 'c', 'd', 'e'];
const stations = circuit.map((id) => aStation(id));
const booked = (hours: string, agenda: NonNullable<Module['session']>['agenda']) => ({
  session: { booked: time(hours), agenda },
});
const day = aModule({
  stations,
  ...booked('3 h 20 min', [
    item('brief', { takes: time('15 min'), script: ['for training only'] }),
    item('circuit', { stations: circuit }),
    item('debrief', { takes: 'the rest' as const }),
  ]),
});
const shownOf = (module: Module, settings: CohortSettings = {}, view = {}): ShownSession =>
  showSession(module, cohortOf(module, {}, settings), bench, view);
const grid = ({ circuits }: ShownSession): readonly (readonly string[])[] =>
  circuits[0]!.rounds.map(({ time: at, cells }) => [at.text, ...cells.map(({ text }) => text)]);
const notes = (shown: ShownSession): readonly string[] =>
  shown.notes.map(({ text }) => text.replaceAll('\u00a0', ' '));

// Worked by hand: 20 in groups of 4 at 5 stations of 25 min with 5 min to change, from minute 15 on.
describe('a session of 20 trainees', () => {
  it('has its timetable from the beginning of the session', () => {
    const shown = shownOf(day);
    expect(shown.agenda.map(({ time: at }) => at.text)).toEqual(['0:00–0:15', '0:15–2:40', '2:40–3:20']);
    expect(grid(shown)).toEqual([
      ['0:15–0:40', 'Group 1', 'Group 2', 'Group 3', 'Group 4', 'Group 5'],
      ['0:45–1:10', 'Group 5', 'Group 1', 'Group 2', 'Group 3', 'Group 4'],
      ['1:15–1:40', 'Group 4', 'Group 5', 'Group 1', 'Group 2', 'Group 3'],
      ['1:45–2:10', 'Group 3', 'Group 4', 'Group 5', 'Group 1', 'Group 2'],
      ['2:15–2:40', 'Group 2', 'Group 3', 'Group 4', 'Group 5', 'Group 1'],
    ]);
  });

  it('has it by the clock where it is known when it begins, past midnight too', () => {
    expect(grid(shownOf(day, {}, { starts: 780 })).map(([at]) => at)).toEqual([
      '13:15–13:40',
      '13:45–14:10',
      '14:15–14:40',
      '14:45–15:10',
      '15:15–15:40',
    ]);
    expect(shownOf(day, {}, { starts: 1430 }).agenda[0]!.time.text).toBe('23:50–00:05');
  });

  it('tells each group where it is', () => {
    const [, second] = shownOf(day).circuits[0]!.groups;
    expect(second!.size.text).toBe('4 trainees');
    expect(second!.places.map(({ place }) => place.text)).toEqual(['B', 'C', 'D', 'E', 'A']);
  });

  it('says who comes, in groups as even as can be', () => {
    expect(shownOf(day, { people: { trainees: 18 } }).people[0]!.says.text).toBe(
      '18 trainees in 5\u00a0groups: 4, 4, 4, 3, 3',
    );
    expect(shownOf(day, { people: { trainees: 1 } }).people[0]!.says.text).toBe('trainees: 1');
  });
});

it('what people may react to is asked for, also where nothing is known that they meet', () => {
  const brief = booked('1 h', [item('brief', { takes: 'the rest' as const, script: ['allergens'] })]);
  const saidIn = (module: Module) => shownOf(module).agenda[0]!.script[0]!.text;
  expect(saidIn(aModule(brief))).toBe(
    'Nothing is named here that people often react to; tell us now what you react to.',
  );
});

describe('what does not fit is said', () => {
  it('21 trainees: a sixth group rests, and 15 + 175 of 200 min fit; in 3 h they would not', () => {
    const shown = shownOf(day, { people: { trainees: 21 } });
    expect(shown.circuits[0]!.columns.at(-1)).toMatchObject({ isRest: true, name: { text: 'Rest' } });
    expect(grid(shown).map((row) => row.at(-1))).toEqual([
      'Group 6',
      'Group 5',
      'Group 4',
      'Group 3',
      'Group 2',
      'Group 1',
    ]);
    expect(notes(shown)).toEqual([]);
    const short = { ...day, session: { ...day.session!, booked: time('3 h') } };
    expect(notes(shownOf(short, { people: { trainees: 21 } }))).toEqual([
      'It does not fit: the agenda takes 3 h 10 min, and 3 h are booked. That is 10 min too much.',
    ]);
  });

  it('time left over, no time at all, an item without a time, and nobody to practise', () => {
    const brief = aModule(booked('1 h', [item('brief', { takes: time('15 min') }), item('talk')]));
    expect(notes(shownOf(brief))).toEqual([
      '“Talk” has no time.',
      'The agenda takes 15 min of the 1 h booked; 45 min are left over.',
    ]);
    expect(notes(shownOf(aModule()))).toEqual(['No time is booked: when things happen is not known.']);
    expect(notes(shownOf(day, { people: { trainees: 0 } }))[0]).toBe('Nobody comes to practise.');
  });

  it('too few instructors, too few seats, a reset longer than the change-over, a guide that is not there', () => {
    const models = [{ guide: 'gone', uses: 1, share: 'mixed' as const, besides: {} }];
    const module = aModule({
      cohort: { ...day.cohort, ratio: 8, instructors: 2 },
      stations: [aStation('a', { seats: 1, reset: time('6 min'), models })],
      ...booked('2 h 25 min', [item('turns', { stations: ['a'] })]),
    });
    expect(notes(shownOf(module))).toEqual([
      'Too few instructors: 3 needed, 2 there.',
      'At “A” 2 of a group of 4 have a place at once; the others take turns.',
      '“A” takes 6 min to set up again, and there are 5 min to change.',
      'The guide “gone” is not there: its models are not counted.',
    ]);
  });
});

describe('what the models take before and after', () => {
  const guides = {
    pad: aGuide('pad', {
      lasts: '3',
      inUse: {
        setUp: { takes: time('20 min'), do: 'tape it to the table', uses: [] },
        between: { takes: time('7 min'), uses: [] },
        after: { takes: time('15 min'), uses: [] },
        renew: [],
      },
    }),
  };
  const models = [{ guide: 'pad', uses: 1, share: 'mixed' as const, besides: {} }];
  const module = aModule({
    stations: [aStation('a', { models, seats: 4 })],
    ...booked('2 h 40 min', [
      item('turns', { stations: ['a'] }),
      item('clear-up', { takes: time('15 min') }),
    ]),
  });
  const workspace = { ...bench, guides: { ...bench.guides, ...guides } };
  const of = (own: Module, view = {}) => showSession(own, cohortOf(own, guides), workspace, view);

  it('is said by the clock where it is known, also where that is the day before', () => {
    const setUp = (view: object) => of(module, view).care.setUp.text.replaceAll('\u00a0', ' ');
    expect(setUp({})).toBe('Set up 20 min before it begins, each station by somebody of its own.');
    expect(setUp({ starts: 780 })).toBe(
      'Set up from 12:40 on, each station by somebody of its own: the longest takes 20 min.',
    );
    expect(setUp({ starts: 20 })).toContain('from 00:00 on, each');
    expect(setUp({ starts: 5 })).toContain('from 23:45 on the day before, each');
  });

  // 9:00 less 30 h is 3:00 of the day before; less 36 h is 21:00, two days before
  it.each([
    ['30 h', 'Set up from 03:00 on the day before, each'],
    ['36 h', 'Set up from 21:00 on, 2 days before, each'],
  ])('is said where it takes longer than a day: %s', (takes, says) => {
    const pad = { ...guides.pad, inUse: { ...guides.pad.inUse, setUp: { takes: time(takes), uses: [] } } };
    const cohort = cohortOf(module, { pad });
    const { care } = showSession(module, cohort, workspace, { starts: 540 });
    expect(care.setUp.text.replaceAll('\u00a0', ' ')).toContain(says);
  });

  it('is a note where it does not fit between two groups, or into the clear-up', () => {
    expect(notes(of(module))).toEqual(['“A” takes 7 min to set up again, and there are 5 min to change.']);
    const short = {
      ...module.session!,
      agenda: [module.session!.agenda[0]!, item('clear-up', { takes: time('10 min') })],
    };
    expect(notes(of({ ...module, session: { ...short, booked: time('2 h 35 min') } }))).toContain(
      'The models of one station take 15 min to clear up, and the agenda has 10 min for it.',
    );
  });
});

describe('the demo', () => {
  let workspace: Workspace;
  beforeAll(async () => {
    workspace = (await readWorkspace('content/quillmoor')).workspace!;
  });

  const demoOf = (id: string, settings: CohortSettings = {}, view = {}): ShownSession => {
    const module = workspace.modules[id]!;
    const cohort = cohortOf(module, workspace.guides, { spares: workspace.program.spares, ...settings });
    return showSession(module, cohort, workspace, view);
  };

  // 18 in groups of 5 are 5, 5, 4, 4. Skins last 4 uses: ceil(18 / 4) = 5, 3 on frames and 2 more; with one spare
  // frame and one spare skin there are 7 skins.
  it('half a day: 18 in 4 groups, every model with its spare', () => {
    const shown = demoOf('emergency-procedures-day');
    expect(shown.people[0]!.says.text).toBe('18 trainees in 4\u00a0groups: 5, 5, 4, 4');
    expect(shown.models[0]).toMatchObject({
      count: { text: '4\u00a0models' },
      of: { text: '3 to practise on and 1\u00a0spare' },
      parts: [{ text: 'Skin: 7 in all, 4 of them on the models' }],
    });
    expect(shown.instructors.says.text).toBe('3 there, 3 needed');
    expect(shown.notes).toEqual([]);
  });

  // 2026-12-25 is a Friday on which the room is closed, 2026-12-26 a Saturday, 2026-12-24 a Thursday.
  it.each([
    ['2026-12-25', ['The session is on Fri 25 December 2026, a day on which the program is closed.']],
    ['2026-12-26', ['The session is on Sat 26 December 2026, a day on which the program is closed.']],
    ['2026-12-24', []],
  ])('on %s says whether the program is closed', (on, told) => {
    expect(notes(demoOf('emergency-procedures-day', {}, { on }))).toEqual(told);
  });

  it('tells the life of each model, and what one use of it costs', () => {
    const module = workspace.modules['emergency-procedures-day']!;
    const { cohort, demand, settings } = sessionQuestion(module, workspace, {}, { today: '2026-11-25' });
    const plan = makePlan(workspace, demand, { ...settings, effort: '1/20' });
    if ('refused' in plan) throw new Error(JSON.stringify(plan.refused));
    const lives = showLives('lives', cohort, workspace, showPlan(plan, workspace));
    expect(lives.map(({ care }) => care.map(({ id }) => id))).toEqual([
      ['set-up', 'between', 'after'],
      ['set-up', 'between', 'after'],
      ['set-up', 'between', 'after', 'remelt'],
      ['set-up', 'between', 'after'],
    ]);
    for (const { perUse } of lives) expect(perUse.text).toMatch(/^One use costs £\d+\.\d\d\.$/);
    const leaves = leavesOf(lives);
    expect(new Set(leaves.map(({ key }) => key)).size).toBe(leaves.length);
    expect(showLives('lives', cohort, workspace).map(({ perUse }) => perUse.text)).toEqual(['', '', '', '']);
  });

  it('every text has a key of its own and is proper, for any number of people', () => {
    const ids = fc.constantFrom(...Object.keys(workspace.modules));
    const people = fc.integer({ min: 0, max: 60 });
    const starts = fc.option(fc.integer({ min: 0, max: 1439 }), { nil: undefined });
    fc.assert(
      fc.property(ids, people, starts, (id, trainees, from) => {
        const shown = demoOf(id, { people: { trainees } }, from === undefined ? {} : { starts: from });
        const leaves = leavesOf(shown);
        expect(new Set(leaves.map(({ key }) => key)).size).toBe(leaves.length);
        for (const { key, text } of leaves) {
          expect(key).toMatch(/^session\./);
          expect(text, key).not.toMatch(/NaN|undefined|null|Infinity|\[object|[{}]/);
          expect(text, key).not.toMatch(/\d (?:min|h|d|s)(?![\p{L}\d])/u);
          expect(text, key).toBe(text.trim());
        }
      }),
    );
  });
});
