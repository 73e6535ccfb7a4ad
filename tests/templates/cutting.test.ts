import { toHtml } from 'hast-util-to-html';
import { describe, expect, it } from 'vitest';
import type { ShownCutting, ShownLayout } from '../../src/showing/shown/shown-cutting.ts';
import { cutCautions } from '../../src/showing/safety/cut-cautions.ts';
import { cuttingWords } from '../../src/words/cutting.ts';
import { pageWords } from '../../src/words/pages.ts';
import { sheetWords } from '../../src/words/sheets.ts';
import { whatIfWords } from '../../src/words/what-if.ts';
import { cuttingSheet } from '../../templates/sheets/cutting-sheet.tsx';
import { guidePage } from '../../templates/guide/guide-page.tsx';
import { seen } from './seen.ts';
import { guide, hotGlue, line, plan, text, view } from './views.ts';

const piece = (number: string, of = '') => ({
  number: text(number),
  piece: text(`Piece ${number}`),
  of: text(of),
  model: text('7'),
  size: text('150 × 100'),
  fromLeft: text('152'),
  fromBottom: text('101'),
});
const layout = (rest: Partial<ShownLayout> = {}): ShownLayout => ({
  title: text('Sheet 1'),
  what: text('1 sheet of 600 mm × 450 mm'),
  size: text('600 mm × 450 mm'),
  holds: text('2 × Skin'),
  left: text('600 mm × 30 mm left whole'),
  sizeHead: text('Size, mm'),
  caption: text('2 × Skin; 600 mm × 30 mm left whole'),
  pieces: [piece('1'), piece('2')],
  drawing: {
    by: 'sheets',
    width: 600,
    height: 450,
    goesOn: false,
    boxes: [],
    across: [],
    up: [],
  },
  ...rest,
});
const felt = (rest: Partial<ShownCutting> = {}): ShownCutting => ({
  material: 'felt',
  by: 'sheets',
  name: text('Felt of 3 mm'),
  says: text('1 sheet of it; 83 % used.'),
  used: text('83 % used'),
  bound: text('No cutting plan costs less.'),
  isLeast: true,
  layouts: [layout()],
  ...rest,
});
const withFelt = { ...plan, cutting: [felt()] };
const sheetOf = (cutting: readonly ShownCutting[]): string =>
  seen(
    cuttingSheet({
      language: 'en-GB',
      root: '../../../',
      back: '../index.html',
      guide,
      plan: { ...plan, cutting },
      batch: '4 models',
      line,
      cautions: [hotGlue],
    }),
  );

const cutHref = 'cutting-plan/index.html';
const sheets = [{ id: 'cutting-plan', name: pageWords.guide.cutSheet, href: cutHref }];

describe('the page of a guide that cuts', () => {
  const page = seen(guidePage({ ...view, plan: withFelt, cutHref, sheets }));
  const own = page.slice(page.indexOf('id="cutting"'));

  it('says what is cut from what, how near that is to the least, and where each piece lies', () => {
    for (const words of [
      'Felt of 3 mm',
      '83 % used',
      'No cutting plan costs less',
      'Piece 2',
      '>152<',
      '>101<',
    ])
      expect(own).toContain(words);
    expect(own).toContain('left whole');
  });

  it('leads to the sheet to print, from there and from the top', () => {
    expect(page.split('href="cutting-plan/index.html"')).toHaveLength(3);
    expect(page.indexOf(pageWords.guide.cutSheet)).toBeLessThan(page.indexOf('id="cutting"'));
  });

  it('has no such part, no way to it and no sheet where nothing is cut', () => {
    const plainPage = toHtml(guidePage(view));
    expect(plainPage).not.toContain('id="cutting"');
    expect(plainPage).not.toContain(pageWords.guide.cutSheet);
  });

  it('names the guide of each piece only where the plan is of several', () => {
    expect(own).not.toContain(`>${cuttingWords.columns.of}<`);
    const several = {
      ...plan,
      cutting: [felt({ layouts: [layout({ pieces: [piece('1', 'Knot board')] })] })],
    };
    const other = seen(guidePage({ ...view, plan: several, cutHref: 'x' }));
    expect(other).toContain(`>${cuttingWords.columns.of}<`);
    expect(other).toContain('Knot board');
  });

  it('draws a length with what it holds below, and no table', () => {
    const pieces = [{ ...piece('1–3'), fromLeft: text(''), fromBottom: text('') }];
    const lengths = { ...plan, cutting: [felt({ by: 'lengths', layouts: [layout({ pieces })] })] };
    const lengthPage = seen(guidePage({ ...view, plan: lengths, cutHref }));
    const part = lengthPage.slice(lengthPage.indexOf('id="cutting"'));
    expect(part).toContain('2 × Skin');
    expect(part).not.toContain('class="pieces"');
  });
});

describe('the cutting plan to print', () => {
  const sheet = sheetOf([felt()]);

  it('puts what can hurt before what is cut, and says that it is for training only', () => {
    const places = ['For training only', 'Hot glue sticks', 'Local policy first', 'Felt of 3 mm'].map(
      (words) => sheet.indexOf(words),
    );
    expect(places.every((at, i) => at > (places[i - 1] ?? -1))).toBe(true);
  });

  it('has a box to tick at each piece, room for who cut and checked, and no prices', () => {
    const table = sheet.slice(sheet.indexOf('class="pieces"'));
    expect(table.match(/class="box"/g)).toHaveLength(2);
    expect(sheet).toContain(sheetWords.cutting.cutBy);
    expect(sheet).not.toContain('£');
  });

  it('says that it is drawn to scale and not full size', () => {
    expect(sheet).toContain('not full size');
  });

  it('has a table for lengths too, without places', () => {
    const pieces = [{ ...piece('1–3'), fromLeft: text(''), fromBottom: text('') }];
    const lengths = sheetOf([felt({ by: 'lengths', layouts: [layout({ pieces })] })]);
    expect(lengths).toContain('1–3');
    expect(lengths).not.toContain(cuttingWords.columns.fromLeft);
  });

  it('carries the cautions of the step that first takes what is cut', () => {
    const glue = { ...hotGlue, id: 'other', steps: text('Step 9') };
    const cut = { ...line, cautions: [hotGlue, glue] };
    expect(cutCautions(withFelt, cut).map(({ id }) => id)).toEqual(['hot-glue']);
  });
});

describe('other batch sizes', () => {
  const curve = {
    full: text('Packs are full at 4 and 8 models.'),
    rows: [{ models: text('4'), each: text('£4.50'), note: text('full') }],
    drawing: { points: [], across: [], up: [] },
  };

  it('are a sentence, a picture, and a table of every size', () => {
    const page = toHtml(guidePage({ ...view, curve }));
    const own = page.slice(page.indexOf('id="costs"'));
    for (const words of ['Packs are full at 4', 'class="curve"', whatIfWords.curve.all, '£4.50'])
      expect(own).toContain(words);
    expect(toHtml(guidePage(view))).not.toContain('class="curve"');
  });
});
