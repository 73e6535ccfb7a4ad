import { stringify } from 'csv-stringify/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Scoring } from '../../src/core/model/module.ts';
import { readWorkspace } from '../../src/index.ts';
import { withJudged } from '../../src/reading/judges.ts';
import { makeReport } from '../../src/reading/report.ts';
import { makeSource } from '../../src/reading/text/source.ts';
import { readTable } from '../../src/reading/text/table.ts';
import { passMarkText } from '../../src/showing/session/pass-mark-text.ts';
import { aModule } from '../core/plan/cohort/a-module.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const item = (id: string, weight = '1') => ({ id, says: id, weight, critical: false, objectives: [] });
const items = ['a', 'b', 'c', 'd'].map((id) => item(id));
type Method = 'angoff' | 'borderline-regression' | 'contrasting-groups';

function read(method: Method, csv: string, more: Partial<Scoring> = {}) {
  const { report, found } = makeReport();
  const pass = { method, judges: 'judges.csv', on: '2026-10-01' };
  const scoring: Scoring = { items, ratings: [], penalties: [], raterNotes: [], pass, ...more };
  const files = new Map([['modules/m/judges.csv', bytes(csv)]]);
  const module = withJudged(aModule({ scoring }), files, report);
  return { found, says: passMarkText(module.scoring!).replaceAll('\u00a0', ' ') };
}

/** Computed independently with scipy; the methods as handbooks of medical education describe them (from memory). */
describe('a pass mark from the judges’ table', () => {
  it('by Angoff, in any order of columns, as shares or percentages', () => {
    const csv = 'b,judge,a,c,d\n0.6,j1,0.8,0.9,0.7\n65 %,j2,70 %,95 %,60%\n0.5,j3,0.9,0.85,0.75\n';
    expect(read('angoff', csv)).toEqual({
      found: [],
      says: '74.17 % (Angoff, 3 judges, 4 items, 1 October 2026)',
    });
  });

  it('by borderline regression: 11.375 of 20 points are 56.88 %', () => {
    const [g, s] = [
      [1, 2, 2, 3, 3, 4, 4, 5],
      [8, 11, 12, 14, 15, 17, 18, 20],
    ];
    const rows = g.map((rating, i) => `p${i};${rating};${s[i]}\r\n`);
    const csv = `\uFEFFperson;rating;points\r\n${rows.join('')}`;
    expect(read('borderline-regression', csv, { items: [item('all', '20')] })).toEqual({
      found: [],
      says: '56.88 % (borderline regression, 8 people, 1 October 2026)',
    });
  });

  it('of contrasting groups: between N(55, 10) and N(80, 6)', () => {
    const csv = 'person,ready,points\n1,no,47.9289322\n2,no,62.0710678\n3,yes,75.7573593\n4,yes,84.2426407\n';
    expect(read('contrasting-groups', csv, { items: [item('all', '100')] })).toEqual({
      found: [],
      says: '69.43 % (contrasting groups, 4 people, 1 October 2026)',
    });
  });

  it('that none is set, that nobody says, and that the table is not there, is said', () => {
    const text = (pass: Scoring['pass']) =>
      passMarkText({ items, ratings: [], penalties: [], raterNotes: [], ...(pass ? { pass } : {}) });
    expect(text('none')).toBe('No pass mark is set.');
    expect(text(undefined)).toBe('It is not said whether there is a pass mark.');
    expect(text({ method: 'angoff', judges: 'judges.csv' })).toBe(
      'The pass mark is set by Angoff, and what the judges said is not there.',
    );
  });

  it('of the demo: 22.7 of 30 weighed shares', async () => {
    const { workspace } = await readWorkspace('content/quillmoor');
    const { scoring } = workspace!.modules['knots-and-stitches']!;
    expect(passMarkText(scoring!)).toBe('75.67\u00a0% (Angoff, 3\u00a0judges, 5\u00a0items, 1 October 2026)');
    // who judged what is nobody's business
    expect(JSON.stringify(scoring)).not.toContain('"judge"');
  });
});

describe('a table', () => {
  const cellsOf = (text: string) => {
    const { report, found } = makeReport();
    const table = readTable(makeSource('t.csv', text), report);
    const cells = table && [table.header, ...table.rows].map((row) => row.map((cell) => cell.text));
    return { cells, found, table };
  };

  it('has the cells that were written, whatever stands in them, blanks round them and empty rows apart', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', ' ', ',', ';', '"', '\n', 'é', '1') });
    const rows = fc.array(fc.array(cell, { minLength: 2, maxLength: 2 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(rows, (written) => {
        const text = stringify([['x', 'y'], ...written]);
        const expected = [['x', 'y'], ...written]
          .map((row) => row.map((one) => one.trim()))
          .filter((row) => row.some((one) => one !== ''));
        expect(cellsOf(text).cells).toEqual(expected);
      }),
    );
  });

  it('knows where each cell stands', () => {
    const { table } = cellsOf('who,share\na , "0.7"\n');
    const { from, to } = table!.rows[0]![1]!;
    expect('who,share\na , "0.7"\n'.slice(from, to).trim()).toBe('"0.7"');
  });

  // decoded anew from the start for each cell this takes half a minute
  it('knows it in a table of 260 kB at once', { timeout: 5000 }, () => {
    const text = `who,share\n${'dé,0.7\ufeff\n'.repeat(20_000)}last,1\n`;
    const [last] = cellsOf(text).table!.rows.at(-1)!;
    expect(text.slice(last!.from, last!.to)).toBe('last');
  });

  it('knows it behind letters of several bytes and lines without anything in them', () => {
    const text = 'wer,anteil\n\nJörg 😀,0.7\n';
    const { from, to } = cellsOf(text).table!.rows[0]![1]!;
    expect(text.slice(from, to)).toBe('0.7');
  });

  it('of more than 64 kB is refused, and one of nearly that is read at once', () => {
    const rows = (count: number) => `person,ready,points\n${'é,yes,1\n'.repeat(count)}`;
    expect(read('contrasting-groups', rows(8000)).found.map(({ code }) => code)).toEqual(['file-too-large']);
    const began = performance.now();
    expect(read('contrasting-groups', rows(7000)).found.map(({ code }) => code)).toContain(
      'judges-row-twice',
    );
    expect(performance.now() - began).toBeLessThan(10_000);
  });

  it('without anything in it is none', () => {
    expect(cellsOf('').table).toBeUndefined();
    expect(cellsOf('\n\n').table).toBeUndefined();
  });
});
