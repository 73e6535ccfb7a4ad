import { describe, expect, it } from 'vitest';
import { pictureSize } from '../../src/rendering/picture-size.ts';

const bytes = (hex: string): Uint8Array =>
  Uint8Array.from(
    hex
      .replace(/\s/g, '')
      .match(/../g)!
      .map((byte) => Number.parseInt(byte, 16)),
  );
const text = (svg: string): Uint8Array => new TextEncoder().encode(svg);

describe('the size of a picture', () => {
  /** Heads of files made by hand from the standards named in the source. */
  it.each([
    [
      'PNG',
      bytes('89504e47 0d0a1a0a 0000000d 49484452 00000280 000001e0 08020000 00'),
      { width: 640, height: 480 },
    ],
    ['GIF', bytes('474946383961 8002 e001 f7'), { width: 640, height: 480 }],
    [
      'JPEG, after a segment of 16 bytes',
      bytes('ffd8 ffe0 0010 4a46494600010100000100010000 ffc0 0011 08 01e0 0280 03 012200'),
      { width: 640, height: 480 },
    ],
    ['JPEG, progressive', bytes('ffd8 ffc2 0011 08 01e0 0280 03 012200 021101'), { width: 640, height: 480 }],
    [
      'WebP, extended',
      bytes('52494646 00000000 57454250 56503858 0a000000 10000000 7f0200 df0100'),
      { width: 640, height: 480 },
    ],
    [
      'WebP, lossless',
      bytes('52494646 00000000 57454250 5650384c 00000000 2f 7fc27700 0000000000'),
      { width: 640, height: 480 },
    ],
    ['SVG by its view box', text('<svg width="10cm" viewBox="0 0 640 480">'), { width: 640, height: 480 }],
    ['SVG by width and height', text('<svg width="64.4" height="48px">'), { width: 64, height: 48 }],
  ])('%s', (_, file, size) => {
    expect(pictureSize(file)).toEqual(size);
  });

  it.each([
    ['words', text('not a picture')],
    ['nothing', new Uint8Array()],
    ['a PNG cut short', bytes('89504e47 0d0a1a0a')],
    ['an SVG without a size', text('<svg>')],
    ['a JPEG without a frame', bytes('ffd8 ffd9')],
    ['a JPEG whose segment has no length', bytes('ffd8 ffe0 0000 0000 0000 0000 0000')],
  ])('is unknown for %s', (_, file) => {
    expect(pictureSize(file)).toBeUndefined();
  });
});
