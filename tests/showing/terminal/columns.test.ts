import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inColumns } from '../../../src/showing/terminal/columns.ts';
import { wrapped } from '../../../src/showing/text/wrapped.ts';

describe('text in columns', () => {
  const left = { align: 'left' } as const;
  const right = { align: 'right' } as const;
  const wraps = { align: 'left', wraps: true } as const;

  it('sets numbers to the right, leaves two spaces between, and no spaces at the end', () => {
    expect(
      inColumns(
        [left, right],
        [
          ['a', '1'],
          ['bcd', '100'],
        ],
        80,
      ),
    ).toEqual(['a      1', 'bcd  100']);
  });

  it('leaves out a column that is empty in every row', () => {
    expect(inColumns([left, left, left], [['a', '', 'b']], 80)).toEqual(['a  b']);
  });

  it('breaks the text of the column that wraps, and hangs the rest under it', () => {
    expect(inColumns([left, wraps], [['WARNING', 'hot gel sticks to skin and burns']], 30)).toEqual([
      'WARNING  hot gel sticks to',
      '         skin and burns',
    ]);
  });

  it('never breaks at a no-break space', () => {
    expect(wrapped('take 500\u00a0g', 8)).toEqual(['take', '500\u00a0g']);
  });

  it('no line is longer than the width, whatever the words; none is lost', () => {
    const word = fc.stringMatching(/^[a-z]{1,30}$/);
    const row = fc.tuple(
      fc.stringMatching(/^[a-z]{1,8}$/),
      fc.array(word, { maxLength: 12 }),
      fc.array(word, { maxLength: 12 }),
    );
    fc.assert(
      fc.property(
        fc.array(row, { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 40, max: 100 }),
        (rows, width) => {
          const cells = rows.map(([a, b, c]) => [a, b.join(' '), c.join(' ')]);
          const lines = inColumns([left, wraps, wraps], cells, width);
          expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(width);
          const letters = (text: string) => [...text.replace(/\s/g, '')].sort().join('');
          expect(letters(lines.join(''))).toBe(letters(cells.flat().join('')));
        },
      ),
    );
  });
});
