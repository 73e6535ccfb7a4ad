import { describe, expect, it } from 'vitest';
import { read } from '../../src/reading/read.ts';
import { baseFiles, codesOf, readWith, textOf } from './base-workspace.ts';

const file = 'modules/first-access/module.md';
const module = read(baseFiles).workspace!.modules['first-access']!;
/** The module of the base with a text in place of another. */
const changed = (find: string, put: string) => readWith({ [file]: textOf(file).replace(find, put) });

const minutes = (n: number) => ({ seconds: String(n * 60) });

describe('a module', () => {
  it('says what trainees will be able to do, and how anybody can tell', () => {
    expect(module.objectives).toEqual([
      {
        id: 'see-the-tip',
        does: 'keep the needle tip in view until it enters the vessel',
        standard: 'in 3 attempts of 4',
        shownBy: 'shows-how',
        by: 'the end of the session',
        practisedAt: ['needling'],
        assessedBy: ['tip-in-view'],
      },
    ]);
  });

  it('has people, who train unless it says otherwise, and a session', () => {
    expect(module.cohort).toEqual({
      ratio: 6,
      instructors: 1,
      people: [{ id: 'trainees', count: 6, as: ['trainees'] }],
    });
    expect(module.session!.booked).toEqual(minutes(90));
    expect(module.session!.agenda.map(({ id, takes, stations }) => [id, takes, stations])).toEqual([
      ['brief', minutes(15), []],
      ['practice', undefined, ['needling']],
      ['debrief', minutes(20), []],
      ['clear-up', minutes(10), []],
      ['slack', 'the rest', []],
    ]);
  });

  it('takes the right choice by its number, and by its own words', () => {
    const rightOf = (put: string) =>
      changed('    right: 2\n', `    right: ${put}\n`).workspace!.modules['first-access']?.selfCheck[0]!
        .right;
    expect(rightOf('1')).toBe(1);
    expect(rightOf('along the beam')).toBe(2);
    expect(rightOf('across the beam')).toBe(1);
  });

  it('has stations with their models', () => {
    expect(module.stations[0]).toMatchObject({
      seats: 3,
      atOne: 2,
      takes: minutes(25),
      changeOver: minutes(5),
      led: true,
      models: [
        { guide: 'needle-block', level: 'shallow', uses: 2, share: 'mixed', besides: { demonstration: 1 } },
      ],
      tools: [{ use: 'scale', count: 1, each: 'station' }],
    });
  });

  it('says how it is judged, and that no pass mark is set', () => {
    expect(module.scoring).toMatchObject({
      limit: minutes(10),
      items: [{ id: 'tip-in-view', weight: '2', critical: true }],
      ratings: [{ id: 'flow', anchors: { '3': 'some unneeded moves' } }],
      penalties: [{ when: 'wall struck', adds: { seconds: '30' }, atMost: 3 }],
      pass: 'none',
    });
  });

  it('asks before and after, and lets trainees check themselves', () => {
    const both = changed('asked: [after]', 'asked: [before, after]').workspace!.modules['first-access']!;
    expect(both.surveys[0]).toMatchObject({ id: 'sure', asked: ['before', 'after'], of: ['trainees'] });
    expect(module.selfCheck[0]).toMatchObject({ right: 2, choices: ['across the beam', 'along the beam'] });
  });

  it('has practice and a total where they are said', () => {
    const practice = changed('    change-over: 5 min\n', '    change-over: 5 min\n    practice: 12 min\n');
    const total = changed('  limit: 10 min\n', '  limit: 10 min\n  total: 2\n');
    expect(practice.workspace!.modules['first-access']!.stations[0]!.practice).toEqual(minutes(12));
    expect(total.workspace!.modules['first-access']!.scoring!.total).toBe('2');
  });

  it('has a pass mark only where it says by which method, and none where it says so', () => {
    const unsaid = changed('    none-set: yes\n', '    on: 2026-10-01\n');
    expect(codesOf(unsaid)).toEqual([]);
    expect(unsaid.workspace!.modules['first-access']!.scoring!.pass).toBeUndefined();
  });

  it('has the words of its texts, a line for each paragraph, item and cell', () => {
    const text =
      '* In **plane**:\n  the tip\n  stays.\n* Go on.\n\n| one | two |\n| --- | --- |\n| 3 | 4 |\n';
    const read = changed('The needle lies in the plane of the picture.', text);
    const { sections } = read.workspace!.modules['first-access']!.prose;
    expect(sections.at(-1)!.text).toBe('In plane: the tip stays.\nGo on.\none\ntwo\n3\n4');
    expect(sections[0]!.text).toBe('You learn to bring a needle into a vessel that you see on the screen.');
  });

  it('has prose of its own', () => {
    expect(module.prose.sections.map(({ heading }) => heading)).toEqual(['', 'The basics']);
  });
});

describe('what cannot be read of a module', () => {
  it.each([
    ['seats: 3', 'seats: three', ['amount-unreadable.in-words']],
    ['share: mixed', 'share: shared', ['unknown-word']],
    ['takes: the rest', 'takes: the remainder', ['duration-vague']],
    ['shown-by: shows-how', 'shown-by: does', ['unknown-word']],
    ['  - read: the basics', '  - reads: the basics', ['unknown-key.near']],
    ['  - read: the basics\n    takes', '  - takes', ['missing-key.read']],
    ['id: practice', 'id: brief', ['id-repeated']],
  ])('%s -> %s', (find, put, codes) => {
    const found = changed(find, put);
    expect(codesOf(found)).toEqual(codes);
    expect('first-access' in found.workspace!.modules).toBe(false);
  });

  it('has no name that a guide has', () => {
    const named = { 'modules/needle-block/module.md': textOf(file) };
    expect(codesOf(readWith(named))).toEqual(['id-reserved.guide']);
  });
});
