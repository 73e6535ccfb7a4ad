import { describe, expect, it } from 'vitest';
import type { Diagnostic } from '../../src/core/diagnostic.ts';
import { filesOf, findingsOf, type Case, type Change } from '../cases/workspace-of-case.ts';

const module = 'modules/first-access/module.md';
const guide = 'guides/needle-block/guide.md';

/** What is found once the base is changed. */
function found(...change: readonly Change[]): readonly Diagnostic[] {
  const one: Case = { code: 'none', name: '', folder: '/nowhere', change };
  return findingsOf(filesOf(one));
}
const codesOf = (findings: readonly Diagnostic[]): string[] => findings.map(({ code }) => code);
const inModule = (find: string, put: string): Change => ({ file: module, find, put });
const inGuide = (find: string, put: string): Change => ({ file: guide, find, put });

describe('how a finding of a module weighs', () => {
  const noBrief = inModule('    - id: debrief\n      takes: 20 min\n', '');
  const severities = (...change: readonly Change[]) => found(...change).map(({ severity }) => severity);

  it('follows from the status of the module', () => {
    expect(severities(noBrief)).toEqual(['warning']);
    expect(severities(noBrief, inModule('status: draft', 'status: reviewed'))).toEqual(['error']);
  });

  it('does not follow from the status of the guides', () => {
    expect(severities(noBrief, inGuide('status: draft', 'status: reviewed'))).toEqual(['warning']);
  });

  it('a rule of thumb stays a warning', () => {
    const verb = inModule('does: keep the needle tip', 'does: learn to keep the needle tip');
    expect(severities(verb, inModule('status: draft', 'status: reviewed'))).toEqual(['warning']);
  });

  it('keeps no guide from being compared with its plan', () => {
    const stated = inGuide('electrosurgery: no', 'electrosurgery: no\nstates:\n  for: 4\n  hands-on: 1 min');
    const overrun = inModule('booked: 1 h 30 min', 'booked: 1 h');
    expect(codesOf(found(stated, overrun)).sort()).toEqual([
      'agenda-does-not-add-up',
      'stated-hands-on-wrong',
    ]);
  });
});

describe('an objective', () => {
  it.each([
    ['understand the plane', true],
    ['Know the plane', true],
    ['to learn the plane', true],
    ['be aware of the plane', true],
    ['appreciate the plane', true],
    ['knot the cord', false],
    ['name what others know', false],
    ['learnedly name the plane', false],
  ])('that begins “%s” is told to begin otherwise: %s', (does, isTold) => {
    const findings = found(
      inModule(
        'keep the needle tip in view until it enters the vessel\n    standard',
        `${does}\n    standard`,
      ),
    );
    expect(codesOf(findings)).toEqual(isTold ? ['verb-not-observable'] : []);
  });

  it('may be named by what assesses it, and need not name that itself', () => {
    expect(found(inModule('    assessed-by: [tip-in-view]\n', ''))).toEqual([]);
  });

  it('that trainees need only know may be judged by questions alone', () => {
    const knows = inModule('shown-by: shows-how', 'shown-by: knows');
    const asked = inModule('assessed-by: [tip-in-view]', 'assessed-by: [where]');
    const question = inModule('  - ask: Where', '  - id: where\n    ask: Where');
    expect(codesOf(found(knows, asked, question))).toEqual([]);
  });

  it('judged by a question and by somebody who watches is judged well', () => {
    const both = inModule('assessed-by: [tip-in-view]', 'assessed-by: [where, tip-in-view]');
    expect(found(both, inModule('  - ask: Where', '  - id: where\n    ask: Where'))).toEqual([]);
  });
});

describe('an agenda', () => {
  // 15 + 25 + 20 + 10 = 70 min
  it.each([
    ['1 h 9 min', ['agenda-does-not-add-up']],
    ['1 h 10 min', []],
    ['1 h 11 min', []],
  ])('of 70 min and the rest, booked for %s', (booked, codes) => {
    expect(codesOf(found(inModule('booked: 1 h 30 min', `booked: ${booked}`)))).toEqual(codes);
  });

  it.each([
    ['1 h 9 min', 'over'],
    ['1 h 10 min', undefined],
    ['1 h 11 min', 'under'],
  ])('of 70 min without a rest, booked for %s', (booked, variant) => {
    const noRest = inModule('    - id: slack\n      takes: the rest\n', '');
    const findings = found(noRest, inModule('booked: 1 h 30 min', `booked: ${booked}`));
    expect(findings.map((finding) => finding.variant)).toEqual(variant ? [variant] : []);
  });

  // 7 people in two groups: 25 + 5 + 25 = 55 min, 100 min in all
  it('grows with the rounds of its circuit', () => {
    const [finding] = found(
      inModule('      count: 6\n', '      count: 7\n'),
      inModule('  instructors: 1', '  instructors: 2'),
    );
    expect([finding?.code, finding?.facts['sum']]).toEqual(['agenda-does-not-add-up', '1 h 40 min']);
  });

  it('whose item goes round a station that is not there is told that alone', () => {
    expect(codesOf(found(inModule('stations: [needling]', 'stations: [neddling]')))).toEqual([
      'unknown-circuit-station',
    ]);
  });
});

describe('a station', () => {
  // 6 people on 3 seats for 25 min: 12 min 30 s each
  it.each([
    ['12 min', []],
    ['12 min 30 s', []],
    ['13 min', ['practice-too-short']],
  ])('of 25 min with two at a seat, that promises %s', (practice, codes) => {
    const promised = inModule(
      '    change-over: 5 min\n',
      `    change-over: 5 min\n    practice: ${practice}\n`,
    );
    expect(codesOf(found(promised))).toEqual(codes);
  });

  it('with a single round need not be set up again', () => {
    expect(
      found(inModule('    change-over: 5 min\n', '    change-over: 5 min\n    reset: 30 min\n')),
    ).toEqual([]);
  });

  it('seats a whole group where it takes as many seats as needed', () => {
    expect(found(inModule('seats: 3', 'seats: as needed'))).toEqual([]);
  });
});

describe('what must be said', () => {
  const clearUp = inModule('        - sharps-count\n', '');

  it('sharps are counted where they stand at a station, not for the tools of the bench', () => {
    const bench = [
      { file: 'tools/loaf-tin.yaml', find: 'price:', put: 'also: [blade]\nprice:' },
      inGuide('steps: [melt-the-gel, pour]', 'steps: [melt-the-gel, pour, unmould]'),
      inGuide('    hands-on: 4 min\n', '    hands-on: 4 min\n    controls: [closed-shoes]\n'),
    ];
    expect(codesOf(found(clearUp, ...bench))).toEqual([]);
  });

  it.each([
    ['brief', '      takes: 15 min\n      script:\n        - training-only\n        - allergens\n', 'error'],
    ['clear-up', '      takes: 10 min\n      script:\n        - pockets\n        - sharps-count\n', 'error'],
    ['debrief', '      takes: 20 min\n', 'warning'],
  ])('without a %s weighs as much as without its words', (id, rest, severity) => {
    const findings = found(inModule(`    - id: ${id}\n${rest}`, ''));
    expect(findings.map((one) => `${one.severity} ${one.code}`)).toEqual([`${severity} missing-agenda-item`]);
  });

  it('words that mean the same are not taken for it', () => {
    const words = inModule(
      '        - training-only\n',
      '        - For training only, never for patient care.\n',
    );
    expect(codesOf(found(words))).toEqual(['missing-from-script']);
  });
});

describe('a scale', () => {
  const anchors =
    '        1: many unneeded moves\n        3: some unneeded moves\n        5: no unneeded moves\n';
  it.each([
    [[1, 3, 5], undefined],
    [[1, 2], undefined],
    [[1, 2, 4], undefined],
    [[1, 3, 4], undefined],
    [[0, 5, 10], undefined],
    [[1, 4], 'middle'],
    [[1, 5], 'middle'],
    [[1, 2, 5], 'middle'],
    [[3], 'ends'],
  ])('with words at %j lacks %s', (points, variant) => {
    const put = points.map((point) => `        ${point}: as it is\n`).join('');
    expect(found(inModule(anchors, put)).map((finding) => finding.variant)).toEqual(variant ? [variant] : []);
  });
});

describe('reading', () => {
  const words = (count: number) => Array.from({ length: count / 5 }, () => 'We go to the sea.').join(' ');
  const text = (count: number) => [
    inModule('read: the basics\n    takes: 10 min', 'read: the-basics\n    takes: 1 min'),
    inModule('The needle lies in the plane of the picture.', words(count)),
  ];

  // Brysbaert 2019 (from memory): 238 words a minute; counted here at 200
  it.each([
    [200, []],
    [205, ['reading-longer-than-stated']],
  ])('%i words in a minute', (count, codes) => {
    expect(codesOf(found(...text(count)))).toEqual(codes);
  });

  const hard = inModule(
    'The needle lies in the plane of the picture.',
    Array.from(
      { length: 20 },
      () => 'Visualisation necessitates continuous coplanar transducer orientation.',
    ).join(' '),
  );
  const german = { file: 'program.yaml', find: 'locale: en-GB', put: 'locale: de-DE' };

  it('is graded in English, where the formula counts', () => {
    expect(codesOf(found(hard))).toEqual(['reading-too-hard']);
    expect(codesOf(found(hard, german))).toEqual([]);
  });

  it.each(['.', 'a-', '.a', 'é', '? '])('a text of nothing but “%s” is counted in time', (sign) => {
    const long = inModule('The needle lies in the plane of the picture.', `The ${sign.repeat(200_000)}x`);
    const promised = inModule('read: the basics\n    takes: 10 min', 'read: the-basics\n    takes: 1 min');
    expect(codesOf(found(long, promised))).not.toContain('missing-module-text');
  });
});
