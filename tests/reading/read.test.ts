import { describe, expect, it } from 'vitest';
import { read } from '../../src/reading/read.ts';
import { baseFiles, codesOf, readGuide, readWith } from './base-workspace.ts';

const base = read(baseFiles);
const guide = base.workspace!.guides['needle-block']!;

describe('a sound workspace', () => {
  it('is read without a word', () => {
    expect(base.diagnostics).toEqual([]);
    expect(base.unread).toEqual([]);
  });

  it('is one plain JSON value', () => {
    expect(JSON.parse(JSON.stringify(base.workspace))).toEqual(base.workspace);
  });

  it('has the program’s money, hours and rooms', () => {
    const { program } = base.workspace!;
    expect(program.work.hours).toEqual([
      [540, 750],
      [780, 1020],
    ]);
    expect(program.labour).toEqual({ amount: '18', currency: 'GBP' });
    expect(program.exchange).toEqual({ USD: { rate: '79/100', on: '2026-10-01' } });
    expect(program.minorDigits).toEqual({ GBP: 2, USD: 2 });
    expect(program.stations).toEqual({ stove: 1, 'fridge-shelf': 12 });
    expect(program.suppliers['craft-shop']).toMatchObject({ arrivesIn: { workingDays: 3 } });
    expect(program.spares).toBe('1/10');
    expect(program.zone.zone).toBe('Europe/London');
  });

  it('has materials with their packs, and what stands for them', () => {
    const { 'gelatin-powder': gelatin, water, 'rubber-tube': tube } = base.workspace!.materials;
    expect(gelatin!.packs[0]).toMatchObject({
      holds: { count: 1, each: { value: '500', unit: 'g' } },
      priced: '2026-09-14',
    });
    expect(gelatin!.density).toEqual({ gramsPerMillilitre: '3/5', source: 'measured' });
    expect(gelatin!.keeps).toEqual({ closed: { months: '24' }, opened: { months: '6' } });
    expect(gelatin!.instead[0]).toMatchObject({ use: 'psyllium', ratio: '1/4', tried: false });
    expect(water!.free).toBe(true);
    expect(tube!.form).toBe('length');
  });

  it('takes a step to follow the one before it, and the first to follow none', () => {
    expect(guide.steps.map(({ after }) => after)).toEqual([[], ['weigh-out'], ['melt-the-gel'], ['pour']]);
  });

  it('reads times that differ by level, and longer ones in a damp room', () => {
    const hours = (n: number) => ({ seconds: String(n * 3600) });
    expect(guide.steps[2]!.wait).toEqual({
      usual: { byLevel: { shallow: hours(12), deep: hours(16) } },
      ifRoom: { damp: hours(24) },
    });
  });

  it('buys the upper end of a range and costs the usual', () => {
    expect(guide.mixes[0]!.of[2]!.amount).toEqual({ least: '8', usual: '10', most: '14', unit: 'g' });
  });

  it('takes a length for one piece, and a count for an amount', () => {
    expect(guide.materials[1]).toMatchObject({
      pieces: [{ id: 'rubber-tube', size: { sides: [{ value: '220', unit: 'mm' }] }, count: 1 }],
    });
    expect(guide.materials[2]).toMatchObject({ amount: { most: '1', unit: '' }, pieces: [] });
  });

  it('gives each step the section of its heading', () => {
    expect(guide.prose.sections.map(({ slug, step }) => [slug, step])).toEqual([
      ['', undefined],
      ['weigh-out', 'weigh-out'],
      ['melt-the-gel', 'melt-the-gel'],
      ['pour', 'pour'],
      ['unmould', 'unmould'],
      ['after-class', undefined],
    ]);
  });

  it('finds the photo that lies beside the guide', () => {
    expect(guide.prose.images).toMatchObject([
      { file: 'tube-in-tin.jpg', exists: true, alt: 'The tube lies level in the tin' },
    ]);
    expect(Object.keys(base.files)).toEqual(['guides/needle-block/tube-in-tin.jpg']);
  });
});

describe('a guide of a few lines', () => {
  const small = 'materials:\n  - use: label\n    count: 2\nsteps:\n  - heading: Stick it on\n';

  it('has a default for everything but title, materials and steps', () => {
    const { workspace, diagnostics } = readGuide(small, '## Stick it on\n');
    expect(diagnostics).toEqual([]);
    expect(workspace!.guides['small']).toMatchObject({
      status: 'draft',
      levels: [],
      yields: '1',
      electrosurgery: { allowed: false, said: false },
      steps: [
        {
          id: 'stick-it-on',
          for: { per: 'model' },
          people: 1,
          partial: true,
          handsOn: { once: { seconds: '0' } },
        },
      ],
    });
  });

  it('may name a heading that is not the step’s id', () => {
    const { workspace } = readGuide(
      small.replace('- heading', '- id: label-it\n    heading'),
      '## Stick it on\n',
    );
    expect(workspace!.guides['small']!.prose.sections[0]).toMatchObject({
      slug: 'stick-it-on',
      step: 'label-it',
    });
  });

  it('is set aside, and named as unread, when something in it cannot be read', () => {
    const { workspace, unread } = readGuide(small.replace('count: 2', 'amount: some'));
    expect(unread).toEqual(['guides/small']);
    expect(Object.keys(workspace!.guides)).toEqual(['needle-block']);
  });
});

describe('what is wrong', () => {
  it('is told of all files in one run, by file and line', () => {
    const found = readWith({
      'materials/label.yaml': 'name: Label\nform: sticker\npacks:\n  - holds: 100\n    price: £2\n',
      'program.yaml': 'name: Skills Room\ncurrency: pounds\ntime-zone: Europe/London\nbuilders: 0\n',
      'guides/second/guide.md': 'no front matter',
    });
    const places = found.diagnostics.map(({ places: [first] }) => `${first!.file}:${first!.line}`);
    expect(places).toEqual([
      'guides/second/guide.md:1',
      'materials/label.yaml:2',
      'materials/label.yaml:5',
      'program.yaml:2',
      'program.yaml:4',
    ]);
  });

  it('leaves no workspace without a program, and the other files are read all the same', () => {
    const { workspace, diagnostics } = read(
      new Map([['materials/felt.yaml', new TextEncoder().encode('name: Felt\nform: x')]]),
    );
    expect(workspace).toBeUndefined();
    expect(diagnostics.map(({ code }) => code)).toEqual(['unknown-word', 'no-program']);
  });

  it('is told again when the same broken file is read a second time', () => {
    const broken = { 'guides/second/guide.md': '---\ntitle: "x\n---\n' };
    expect(codesOf(readWith(broken))).toEqual(['front-matter-unreadable.quote']);
    expect(codesOf(readWith(broken))).toEqual(codesOf(readWith(broken)));
  });

  it('in the prose leaves the guide itself readable', () => {
    const { workspace, diagnostics } = readGuide('materials: []\nsteps: []\n', 'one <b>two</b>\n');
    expect(diagnostics.map(({ code }) => code)).toEqual(['raw-html']);
    expect(workspace!.guides['small']).toBeDefined();
  });
});

describe('folders that are not read yet', () => {
  it('are passed over without a word', () => {
    const files = { 'results/first/results.yaml': 'x' };
    expect(readWith(files).diagnostics).toEqual([]);
  });
});
