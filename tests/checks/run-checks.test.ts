import { describe, expect, it } from 'vitest';
import type { Diagnostic } from '../../src/core/diagnostic.ts';
import { checks, runChecks } from '../../src/checks/checks.ts';
import { makePlan } from '../../src/core/plan/plan.ts';
import { read } from '../../src/reading/read.ts';
import { allCases, filesOf, findingsOf, type Case, type Change } from '../cases/workspace-of-case.ts';

const guide = 'guides/needle-block/guide.md';

/** What is found once the base is changed, by code. */
function found(change: readonly Change[], today?: string): readonly Diagnostic[] {
  const one: Case = { code: 'none', name: '', folder: '/nowhere', change };
  return findingsOf(filesOf(one), today);
}
const codesOf = (findings: readonly Diagnostic[]): string[] => findings.map(({ code }) => code);
const inGuide = (find: string, put: string): Change => ({ file: guide, find, put });

describe('a sound workspace', () => {
  it('is passed over in silence', () => {
    expect(found([])).toEqual([]);
  });

  it('gives the same findings each time', () => {
    const change = [inGuide('uses: [label]', 'uses: [lable]'), inGuide('harm: burns', 'hazards: []')];
    expect(JSON.stringify(found(change))).toBe(JSON.stringify(found(change)));
  });
});

describe('severity', () => {
  const noPicture = inGuide('(tube-in-tin.jpg)', '(tube.jpg)');
  const noPrice = { file: 'materials/label.yaml', find: '    price: 2.00 GBP\n', put: '' };
  const reviewed = inGuide('status: draft', 'status: reviewed');

  it('of what is missing is a warning in a draft, and an error from reviewed on', () => {
    expect(found([noPicture]).map(({ severity }) => severity)).toEqual(['warning']);
    expect(found([noPicture, reviewed]).map(({ severity }) => severity)).toEqual(['error']);
  });

  it('of a shared file is that of the strictest guide that uses it', () => {
    expect(found([noPrice]).map(({ severity }) => severity)).toEqual(['warning']);
    expect(found([noPrice, reviewed]).map(({ severity }) => severity)).toEqual(['error']);
  });

  it('of a shared file that no guide uses is that of a draft', () => {
    const unused = [inGuide('  - use: label\n    count: 1\n', ''), inGuide('uses: [label]', 'uses: []')];
    expect(found([...unused, noPrice, reviewed]).map(({ severity }) => severity)).toEqual(['warning']);
  });

  it('of what only the calendar changes stays a warning', () => {
    expect(new Set(found([reviewed], '2028-01-01').map(({ severity }) => severity))).toEqual(
      new Set(['warning']),
    );
  });

  it('of what may hurt somebody is an error even in a draft', () => {
    const unprotected = found([inGuide('steps: [melt-the-gel, pour]', 'steps: [pour]')]);
    expect(unprotected.map(({ code, severity }) => `${severity} ${code}`)).toEqual([
      'error hazard-without-caution',
    ]);
  });
});

describe('one cause, one message', () => {
  it('a material that is not there is not measured, summed or priced as well', () => {
    const renamed = inGuide('use: gelatin-powder', 'use: gelatine');
    expect(codesOf(found([renamed, inGuide('uses: [gelatin-powder', 'uses: [gelatine')]))).toEqual([
      'unknown-material',
    ]);
  });

  it('a material that could not be read is not missed, and nothing is computed without it', () => {
    const broken = { file: 'materials/gelatin-powder.yaml', find: 'form: bulk', put: 'form: powder' };
    const stated = inGuide('electrosurgery: no', 'electrosurgery: no\nstates:\n  for: 4\n  hands-on: 1 min');
    expect(codesOf(found([broken, stated]))).toEqual(['unknown-word']);
  });

  it('what is wrong at two levels is told once', () => {
    const wrong = inGuide('amount: 120 g', 'amount:\n          shallow: 120 m\n          deep: 140 m');
    expect(codesOf(found([wrong]))).toEqual(['unit-mismatch']);
  });

  it('what is wrong at one level alone is told as well', () => {
    const limits = '    use-within:\n      shallow: 13 h\n      deep: 14 h';
    const wrong = inGuide('    uses: [gel, rubber-tube]', `    uses: [gel, rubber-tube]\n${limits}`);
    const [broken, ...others] = found([wrong]);
    expect([broken?.code, broken?.facts['wait'], others.length]).toEqual(['hold-limit-broken', '16 h', 0]);
  });

  it('steps in a circle are not called dangerous, unordered or late on top of it', () => {
    expect(
      codesOf(found([inGuide('    uses: [psyllium]', '    uses: [psyllium]\n    after: [unmould]')])),
    ).toEqual(['steps-in-a-circle']);
  });

  it('a row for a level that is not there leaves nothing else to say', () => {
    const change = inGuide('    uses: [label]', '    uses: [label]\n    only: [beginners]');
    expect(codesOf(found([change]))).toEqual(['row-of-unknown-level']);
  });

  it('a figure is not compared while something stops the computing', () => {
    const stated = inGuide('electrosurgery: no', 'electrosurgery: no\nstates:\n  for: 4\n  hands-on: 1 min');
    expect(codesOf(found([stated]))).toEqual(['stated-hands-on-wrong']);
    expect(codesOf(found([stated, inGuide('amount: 120 g', 'amount: 120 m')]))).toEqual(['unit-mismatch']);
  });

  it('a figure is not compared with a cost that is not complete', () => {
    const stated = inGuide(
      'electrosurgery: no',
      'electrosurgery: no\nstates:\n  for: 4\n  used-each: 900 GBP',
    );
    const noPrice = { file: 'materials/label.yaml', find: '    price: 2.00 GBP\n', put: '' };
    expect(codesOf(found([stated, noPrice]))).toEqual(['missing-price']);
  });
});

describe('numbers in the text', () => {
  const saying = (text: string) =>
    found([inGuide('Lay the tube, then pour', `Lay the tube, then pour ${text}`)]);

  // 1.2 L of gel in the front matter; gelatin of 0.6 g/mL: 120 g are 200 mL; 20 min are 1/3 h; 220 mm are 22 cm
  it.each([
    '[1.2 L of gel](material:gel)',
    '[1200 mL of gel](material:gel)',
    '[22 cm of tube](material:rubber-tube)',
    '[120 g of gelatin](material:gelatin-powder)',
    '[200 mL of gelatin](material:gelatin-powder)',
    '[10 g of psyllium](material:psyllium)',
    '[14 g of psyllium](material:psyllium)',
    '[8–14 g of psyllium](material:psyllium)',
    '[8 to 14 g of psyllium](material:psyllium)',
    '[1 label](material:label)',
    '[for 20 min](step:melt-the-gel)',
    '[1/3 h of warming](step:melt-the-gel)',
    '[12 h](step:pour)',
    '[16 h](step:pour)',
    '[24 h](step:pour)',
    '[2 L tin](tool:loaf-tin)',
    '[1 tin](tool:loaf-tin)',
    '[the tin](tool:loaf-tin)',
    '[the warning](caution:hot-gel)',
  ])('%s agrees', (text) => {
    expect(saying(text)).toEqual([]);
  });

  it.each([
    ['[1.3 L of gel](material:gel)', '1.2 L'],
    ['[12 g of psyllium](material:psyllium)', '8–14 g'],
    ['[9–14 g of psyllium](material:psyllium)', '8–14 g'],
    ['[210 mm of tube](material:rubber-tube)', '220 mm'],
    ['[2 labels](material:label)', '1'],
    ['[18 min](step:melt-the-gel)', '20 min or 4 min or 1 min'],
    ['[13 h](step:pour)', '12 h or 16 h or 1 d'],
    ['[3 tins](tool:loaf-tin)', '1'],
  ])('%s does not', (text, is) => {
    const [finding, ...others] = saying(text);
    expect([finding?.code, finding?.facts['is'], others.length]).toEqual(['prose-disagrees', is, 0]);
  });

  it('a size may be said either way round, and in another unit', () => {
    const sheet = inGuide(
      '    length: 220 mm',
      '    pieces:\n      - id: strip\n        size: 220 mm x 20 mm',
    );
    const sold = { file: 'materials/rubber-tube.yaml', find: 'holds: 3 m', put: 'holds: 300 mm x 300 mm' };
    const said = (text: string) =>
      found([sheet, sold, inGuide('Lay the tube', `Lay [${text} of tube](material:rubber-tube)`)]);
    expect(said('20 mm x 220 mm')).toEqual([]);
    expect(said('22 cm x 2 cm')).toEqual([]);
    expect(codesOf(said('220 mm x 22 mm'))).toEqual(['prose-disagrees']);
  });
});

describe('stated figures', () => {
  // The base for 4 models: hands-on 5 + 8 + 14 + 4 x 4 = 43 min, so 38.7 to 47.3 min are within a tenth.
  it.each([
    ['39 min', true],
    ['43 min', true],
    ['47 min', true],
    ['38 min', false],
    ['48 min', false],
  ])('%s of hands-on for 43 min: %s', (stated, agrees) => {
    const change = inGuide(
      'electrosurgery: no',
      `electrosurgery: no\nstates:\n  for: 4\n  hands-on: ${stated}`,
    );
    expect(codesOf(found([change]))).toEqual(agrees ? [] : ['stated-hands-on-wrong']);
  });

  /**
   * One builder, Monday: 5 min, 8 min, wait 20 min, 14 min, begun as late as may be, at 16:13, so that hands are off at
   * 17:00; the fridge works overnight; next morning 09:00 4 x 4 min, ready 09:16: 17 h 3 min. A working day later is
   * 41 h 3 min.
   */
  it.each([
    ['17 h 2 min', 'stated-build-time-wrong'],
    ['17 h 3 min', undefined],
    ['41 h 3 min', undefined],
    ['41 h 4 min', 'stated-build-time-wrong'],
  ])('ready in %s, for 17 h 3 min: %s', (stated, code) => {
    const change = inGuide(
      'electrosurgery: no',
      `electrosurgery: no\nstates:\n  for: 4\n  ready-in: ${stated}`,
    );
    expect(codesOf(found([change]))).toEqual(code === undefined ? [] : [code]);
  });
});

describe('prices', () => {
  // Priced on 2026-09-14: a year later to the day is not more than a year.
  it.each([
    ['2027-09-14', 0],
    ['2027-09-15', 7],
  ])('are looked at on %s: %i too old', (today, count) => {
    expect(codesOf(found([], today))).toEqual(Array.from({ length: count }, () => 'old-price'));
  });
});

describe('whatever is wrong together', () => {
  const codes = checks.map(({ code }) => code);
  const cases = allCases().filter(({ code }) => codes.includes(code));

  it('nothing that the cases break, two at a time, makes the checks fail', () => {
    const pairs = cases.flatMap((one, i) =>
      i % 2 === 0 ? [[one, cases[(i * 7 + 3) % cases.length]!] as const] : [],
    );
    const tried = pairs.filter(([one, other]) => runsBoth(one, other));
    expect(tried.length).toBeGreaterThan(30);
  }, 120_000);
});

function runsBoth(one: Case, other: Case): boolean {
  const both: Case = { ...one, change: [...(one.change ?? []), ...(other.change ?? [])] };
  let files;
  try {
    files = filesOf(both);
  } catch {
    return false; // both change the same line
  }
  const { workspace, origins, unread, files: beside } = read(files);
  return (
    workspace !== undefined &&
    runChecks({ workspace, origins, unread, files: beside, today: '2026-11-25' }).length >= 0
  );
}

describe('vapour before a flame under a hold limit', () => {
  // Worked by hand: 40 min to clear, and 4 min + 1 min a model with the flame on, one model: 45 min.
  const limits = [
    ['45 min', []],
    ['44 min', ['vapour-outlasts-hold-limit']],
    ['4 min', ['hold-limit-broken']],
  ] as const;
  const written = (limit: string): readonly Change[] => [
    {
      file: 'materials/psyllium.yaml',
      find: 'form: bulk',
      put: 'form: bulk\nhazards: [H226]\ndata-sheet:\n  link: https://supplier.example.org/p.pdf\n  dated: 2026-03-01',
    },
    inGuide('steps: [melt-the-gel, pour]', 'steps: [weigh-out, melt-the-gel, pour]'),
    inGuide(
      '    uses: [psyllium]',
      `    uses: [psyllium]\n    controls: [ventilation]\n    clears-in: 40 min\n    use-within: ${limit}`,
    ),
    inGuide('    set:\n      heat: 60 °C', '    set:\n      heat: 60 °C\n    ignition: yes'),
    inGuide('    uses: [gel, rubber-tube]', '    uses: [gel, rubber-tube]\n    clears-in: 20 min'),
  ];

  it.each(limits)('of %s is found exactly where no plan can be made', (limit, codes) => {
    const one: Case = { code: 'none', name: '', folder: '/nowhere', change: written(limit) };
    expect(codesOf(findingsOf(filesOf(one)))).toEqual(codes);
    const { workspace } = read(filesOf(one));
    const plan = makePlan(workspace!, [{ guide: 'needle-block', wanted: 1 }], {
      today: '2026-11-25',
      effort: '1/50',
    });
    expect('refused' in plan ? 'refused' : 'none' in plan.schedule).toBe(codes.length > 0);
  });
});
