import { describe, expect, it } from 'vitest';
import { curveKey, outlayCurve } from '../../../src/showing/figures/outlay-curve.ts';
import type { CurveDrawing } from '../../../src/showing/shown/shown-what-if.ts';
import { htmlOf } from './drawn.ts';

const text = (words: string) => ({ key: words, text: words });
const point = (at: number, up: number, label: string, kinds: { full?: boolean; current?: boolean } = {}) => ({
  at,
  up,
  label: text(label),
  full: kinds.full ?? false,
  current: kinds.current ?? false,
});
const curve: CurveDrawing = {
  points: [
    point(250, 1600, ''),
    point(500, 400, '2', { full: true }),
    point(750, 600, '3', { current: true }),
  ],
  across: [{ at: 500, label: text('2 models') }],
  up: [{ at: 0, label: text('£0.00') }],
};
const html = htmlOf(outlayCurve(curve));

describe('the picture of the outlay', () => {
  it('is a saw-tooth through every size; one that costs too much lies above the picture', () => {
    expect(html).toContain('d="M250 -600L500 600L750 400"');
  });

  it('marks full packs with a dot and this batch with a diamond: they differ without colour', () => {
    expect(html.match(/class="curve-full"/g)).toHaveLength(1);
    expect(html).toContain('<circle class="curve-full" cx="50%" cy="60%"');
    expect(html.match(/class="curve-current"/g)).toHaveLength(1);
    expect(htmlOf(curveKey('full'))).toContain('<circle');
    expect(htmlOf(curveKey('current'))).toContain('<path');
  });

  it('marks nothing above the picture', () => {
    const above = { ...curve, points: [point(250, 1600, '1', { full: true, current: true })] };
    expect(htmlOf(outlayCurve(above))).not.toMatch(/curve-full|curve-current|curve-size/);
  });

  it('labels both scales, and has no style of its own', () => {
    expect(html).toContain('>2 models</text>');
    expect(html).toContain('>£0.00</text>');
    expect(html).not.toMatch(/style[=>]/);
  });
});
