import { describe, expect, it } from 'vitest';
import type { Module } from '../../../src/core/model/module.ts';
import { moduleOrder } from '../../../src/showing/figures/module-order.ts';
import { drawOrder } from '../../../src/showing/module/draw-order.ts';
import { showMatrix } from '../../../src/showing/module/show-matrix.ts';
import { showModule } from '../../../src/showing/module/show-module.ts';
import { showTeaching } from '../../../src/showing/module/show-teaching.ts';
import { moduleWords } from '../../../src/words/modules.ts';
import { aModule, aStation } from '../../core/plan/cohort/a-module.ts';
import { time } from '../../core/plan/a-workspace.ts';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const scoring: NonNullable<Module['scoring']> = {
  limit: time('8 min'),
  items: [
    { id: 'rib', says: 'over the rib', weight: '2', critical: true, objectives: ['drain'] },
    { id: 'sweep', says: 'sweeps', weight: '1/2', critical: false, objectives: ['drain'] },
    { id: 'tidy', says: 'leaves the room tidy', weight: '1', critical: false, objectives: ['anywhere'] },
  ],
  ratings: [
    {
      id: 'flow',
      says: 'flow',
      anchors: { 1: 'stops', 3: 'some', 5: 'none' },
      objectives: ['drain', 'neck'],
    },
  ],
  penalties: [{ when: 'a sharp lies about', adds: time('30 s'), atMost: 3 }],
  raterNotes: ['say nothing'],
  pass: 'none',
};
const module = aModule({
  title: 'Two stations',
  stations: [aStation('chest'), aStation('neck')],
  objectives: [
    {
      id: 'drain',
      does: 'place a drain',
      standard: 'in 8 min',
      by: 'the end of the day',
      shownBy: 'shows-how',
      practisedAt: ['chest'],
      assessedBy: ['rib', 'sweep', 'flow'],
    },
    { id: 'neck', does: 'open the neck', practisedAt: ['neck'], assessedBy: ['flow'] },
    { id: 'anywhere', does: 'clear up', practisedAt: [], assessedBy: ['tidy'] },
  ],
  scoring,
});

describe('a module for everybody', () => {
  it('says each aim with by when and how well', () => {
    const { objectives } = showModule(module);
    expect(objectives.map(({ does, howWell }) => [does.text, plain(howWell.text)])).toEqual([
      ['Place a drain', 'By the end of the day: in 8 min.'],
      ['Open the neck', ''],
      ['Clear up', ''],
    ]);
    expect(objectives[0]!.means.text).toBe(moduleWords.shownBySays['shows-how']);
  });

  it('says how people are judged without giving away an item', () => {
    const judged = showModule(module).judged.map(({ text }) => plain(text));
    expect(judged).toContain('You have 8 min.');
    expect(judged).toContain('Somebody watches with a list of 3 items.');
    expect(judged).toContain(moduleWords.judged.critical);
    expect(judged.join(' ')).not.toMatch(/rib|sweep|tidy|sharp/);
  });

  it('adds up what is to be done before', () => {
    const prepare = [
      { kind: 'read', what: 'the sheet', takes: time('10 min') },
      { kind: 'do', what: 'tie ten knots', takes: time('55 min') },
    ] as const;
    const { prepareTotal, promised } = showModule({ ...module, prepare, promised: time('90 min') });
    expect(plain(prepareTotal.text)).toBe('1 h 5 min in all.');
    expect(plain(promised.text)).toBe('Never more than 1 h 30 min.');
  });
});

describe('score sheets', () => {
  const { scoreSheets } = showTeaching(module);

  it('hold at each station what serves an objective that is practised there, and apart what belongs to none', () => {
    const held = scoreSheets.map(({ name, items, ratings }) => [
      name.text,
      [...items, ...ratings].map(({ id }) => id),
    ]);
    expect(held).toEqual([
      ['Chest', ['rib', 'sweep', 'flow']],
      ['Neck', ['flow']],
      ['Two stations', ['tidy']],
    ]);
  });

  it('say the total of their weights, exact, and the penalties on each', () => {
    expect(scoreSheets[0]!.total.text).toContain('2.5');
    expect(scoreSheets.every(({ penalties }) => penalties.length === 1)).toBe(true);
    expect(plain(scoreSheets[0]!.penalties[0]!.adds.text)).toBe('30 s each, 3 times at most');
  });

  it('have every point of a rating, those between the anchors too', () => {
    const [rating] = scoreSheets[0]!.ratings;
    expect(rating!.anchors.map(({ point, says }) => [point.text, says.text])).toEqual([
      ['1', 'stops'],
      ['2', ''],
      ['3', 'some'],
      ['4', ''],
      ['5', 'none'],
    ]);
  });
});

describe('the matrix of objectives', () => {
  it('marks where each is practised, and names what anybody can tell it by', () => {
    const { columns, rows } = showMatrix(module);
    expect(columns.map(({ text }) => text)).toEqual(['Chest', 'Neck']);
    expect(rows.map(({ practised }) => practised)).toEqual([
      [true, false],
      [false, true],
      [false, false],
    ]);
    expect(rows[0]!.assessed.map(({ text }) => text)).toEqual(['Over the rib', 'Sweeps', 'Flow']);
  });
});

describe('what comes before what', () => {
  const named = (id: string, ...after: readonly string[]) => ({ id, title: id, after });

  it('puts each module right of all that come before it', () => {
    const drawing = drawOrder([
      named('knots'),
      named('needle'),
      named('day', 'knots', 'needle', 'unknown'),
      named('exam', 'day', 'knots'),
    ]);
    expect(drawing.boxes.map(({ id, column, row }) => [id, column, row])).toEqual([
      ['knots', 0, 0],
      ['needle', 0, 1],
      ['day', 1, 0],
      ['exam', 2, 0],
    ]);
    expect(drawing.lines).toEqual([
      [0, 2],
      [1, 2],
      [2, 3],
      [0, 3],
    ]);
    for (const [from, to] of drawing.lines)
      expect(drawing.boxes[from]!.column).toBeLessThan(drawing.boxes[to]!.column);
  });

  it('draws a box for each module and a line for each step from one to the next', () => {
    const picture = moduleOrder(drawOrder([named('knots'), named('day', 'knots')]));
    const all = JSON.stringify(picture);
    expect(all.match(/order-box/g)).toHaveLength(2);
    expect(all.match(/order-line/g)).toHaveLength(1);
  });
});
