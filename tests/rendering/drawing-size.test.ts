import { describe, expect, it } from 'vitest';
import { drawingSize } from '../../src/rendering/drawing-size.ts';

const sizeOf = (svg: string) => drawingSize(new TextEncoder().encode(svg));

describe('the size of a drawing', () => {
  it.each([
    ['its view box', '<svg width="10cm" viewBox="0 0 640 480">', { width: 640, height: 480 }],
    ['its view box, with commas', "<svg viewBox='-5,-5,640.4,480'>", { width: 640, height: 480 }],
    ['width and height', '<svg width="64.4" height="48px">', { width: 64, height: 48 }],
  ])('is read from %s', (_, svg, size) => {
    expect(sizeOf(svg)).toEqual(size);
  });

  it.each([
    ['words', 'not a picture'],
    ['nothing', ''],
    ['a drawing without a size', '<svg>'],
    ['a drawing of no width', '<svg viewBox="0 0 0 9">'],
  ])('is unknown for %s', (_, svg) => {
    expect(sizeOf(svg)).toBeUndefined();
  });
});
