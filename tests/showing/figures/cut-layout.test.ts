import { describe, expect, it } from 'vitest';
import { cutLayout, offcutHatching } from '../../../src/showing/figures/cut-layout.ts';
import type { CutDrawing } from '../../../src/showing/shown/shown-cutting.ts';
import { htmlOf } from './drawn.ts';

const text = (words: string) => ({ key: words, text: words });
const box = (number: string, x: number, y: number, width: number, height: number) => ({
  x,
  y,
  width,
  height,
  number: text(number),
  name: text('Skin 150 × 100'),
});
const fullSheet: CutDrawing = {
  by: 'sheets',
  width: 600,
  height: 400,
  goesOn: false,
  boxes: [box('1', 0, 0, 300, 100), box('2', 303, 0, 10, 300)],
  across: [{ at: 300, label: text('300') }],
  up: [{ at: 100, label: text('100') }],
};
const sheet: CutDrawing = { ...fullSheet, left: { x: 0, y: 300, width: 600, height: 100 } };
const html = (of: CutDrawing): string => htmlOf(cutLayout(of));

describe('the picture of a cut sheet', () => {
  it('has the shape of the sheet, and places from its lower left corner as shares of it', () => {
    expect(html(sheet)).toContain('viewBox="0 0 600 400"');
    // 100 of 400 high and at the foot: from 75 % down. The gap of 3 mm is half a per cent of 600.
    expect(html(sheet)).toContain('<rect class="cut-piece" x="0%" y="75%" width="50%" height="25%"></rect>');
    expect(html(sheet)).toContain('<rect class="cut-piece" x="50.5%"');
  });

  it('hatches what is no piece, and gives what is left whole an edge of its own', () => {
    expect(html(sheet)).toContain('fill="url(#offcut)"');
    expect(htmlOf(offcutHatching)).toContain('id="offcut"');
    expect(html(sheet)).toContain('<rect class="cut-left" x="0%" y="0%" width="100%" height="25%"></rect>');
    expect(html(fullSheet)).not.toContain('cut-left');
  });

  it('writes on a piece what has room there: number and name, the number, or nothing', () => {
    expect(html(sheet)).toContain('>1</text>');
    expect(html(sheet)).toContain('>Skin 150 × 100</text>');
    expect(html(sheet)).not.toContain('>2</text>');
    const low = { ...sheet, boxes: [box('7', 0, 0, 300, 32)] };
    expect(html(low)).toContain('class="cut-number is-small"');
    expect(html(low)).not.toContain('Skin 150');
  });

  it('says at two edges where a rule is read', () => {
    expect(html(sheet)).toMatch(/class="cut-edge" x="50%" y="100%"[^>]*>300</);
    expect(html(sheet)).toMatch(/class="cut-edge is-up" x="0" y="75%"[^>]*>100</);
  });

  it('tears off a roll that goes on, and lays a length on its side', () => {
    expect(html({ ...sheet, by: 'roll', goesOn: true })).toContain('cut-torn');
    expect(html(sheet)).not.toContain('cut-torn');
    const length = { ...sheet, by: 'lengths', height: 1, boxes: [box('1', 0, 0, 300, 1)] } as const;
    expect(html(length)).toContain('class="cut cut-lengths"');
    expect(html(length)).toContain('width="50%" height="100%"');
  });

  it('draws a graduation at each figure, and marks figures and numbers that crowd each other on a phone', () => {
    const figures = [100, 150, 600].map((at) => ({ at, label: text(String(at)) }));
    const close = html({ ...sheet, across: figures });
    expect(close.match(/class="cut-tick"/g)).toHaveLength(4);
    expect(close).toMatch(/class="cut-edge is-crowded" x="25%"/);
    expect(close).toMatch(/class="cut-edge" x="100%"/);
    expect(html({ ...sheet, boxes: [box('7', 0, 0, 300, 24)] })).toContain('cut-number is-small is-crowded');
  });

  it('tears off a length at its right end, and begins a figure at a graduation near its start', () => {
    const length = { ...sheet, by: 'lengths', height: 1, goesOn: true, up: [] } as const;
    const torn = html({ ...length, across: [{ at: 12, label: text('12 mm') }] });
    expect(torn).toContain('<line class="cut-torn" x1="100%" x2="100%" y1="0" y2="100%"></line>');
    expect(torn).toContain('class="cut-edge is-first"');
  });

  it('has no style of its own, which a page may not hold', () => {
    expect(html(sheet)).not.toMatch(/style[=>]/);
  });

  it('is passed over by readers that speak: the table beside it says the same', () => {
    expect(html(sheet)).toMatch(/^<div class="cut cut-flat" aria-hidden="true">/);
  });
});
