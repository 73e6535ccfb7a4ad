import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { finishPhoto, type PictureCopy } from '../../../src/publishing/disk/finish-photo.ts';
import { type Orientation, corners, orientations, phonePhoto } from '../photos.ts';

async function finished(bytes: Uint8Array): Promise<readonly PictureCopy[]> {
  const made = await finishPhoto(bytes);
  if ('trouble' in made) throw new Error(made.trouble);
  return made;
}
const sizes = (copies: readonly PictureCopy[]) => copies.map(({ width, height }) => [width, height]);

/** The names of the colours near the four corners, clockwise from the top left. */
async function cornersOf({ bytes, width, height }: PictureCopy): Promise<readonly string[]> {
  const { data, info } = await sharp(bytes).raw().toBuffer({ resolveWithObject: true });
  const [x, y] = [Math.floor(width / 8), Math.floor(height / 8)];
  const points = [
    [x, y],
    [width - 1 - x, y],
    [width - 1 - x, height - 1 - y],
    [x, height - 1 - y],
  ] as const;
  return points.map(([left, top]) => {
    const at = (top * info.width + left) * info.channels;
    const bright = [0, 1, 2].map((channel) => data[at + channel]! > 127);
    const names: Record<string, string> = {
      'true,false,false': 'red',
      'false,true,false': 'lime',
      'false,false,true': 'blue',
      'true,true,true': 'white',
    };
    return names[bright.join()] ?? bright.join();
  });
}

describe('a photo as a phone makes it', () => {
  it.each(orientations)(
    'stands upright, stored under orientation %i of EXIF',
    async (orientation: Orientation) => {
      const photo = await phonePhoto(640, 480, orientation);
      const { width, height, exif, ...said } = await sharp(photo).metadata();
      expect([width, height]).toEqual(orientation > 4 ? [480, 640] : [640, 480]);
      expect(said.orientation).toBe(orientation);
      for (const trace of ['Invented phone', '2026:11:25']) expect(exif!.includes(trace)).toBe(true);
      const copies = await finished(photo);
      expect(sizes(copies)).toEqual([[640, 480]]);
      for (const copy of copies) expect(await cornersOf(copy)).toEqual([...corners]);
    },
  );

  it('loses where, when and by what it was taken', async () => {
    const photo = await phonePhoto(2000, 1500, 6);
    expect(Buffer.from(photo).includes('Exif')).toBe(true);
    for (const { bytes } of await finished(photo)) {
      const { exif, icc, iptc, xmp, orientation } = await sharp(bytes).metadata();
      expect([exif, icc, iptc, xmp, orientation]).toEqual([
        undefined,
        undefined,
        undefined,
        undefined,
        undefined,
      ]);
      for (const trace of ['Exif', 'GPS', 'Invented', '2026:11'])
        expect(Buffer.from(bytes).includes(trace)).toBe(false);
    }
  });

  it.each([
    [
      4032,
      3024,
      [
        [480, 360],
        [960, 720],
        [1440, 1080],
      ],
    ],
    [
      3024,
      4032,
      [
        [480, 640],
        [960, 1280],
        [1440, 1920],
      ],
    ],
    [
      1440,
      1080,
      [
        [480, 360],
        [960, 720],
        [1440, 1080],
      ],
    ],
    [
      1000,
      500,
      [
        [480, 240],
        [1000, 500],
      ],
    ],
    [500, 400, [[500, 400]]],
    [60, 40, [[60, 40]]],
    [1000, 9000, [[320, 2880]]],
  ])(
    'of %i × %i points is carried at the widths that a page needs, never larger than it is',
    async (width, height, expected) => {
      expect(sizes(await finished(await phonePhoto(width, height)))).toEqual(expected);
    },
  );

  it('is the same to the byte each time', async () => {
    const photo = await phonePhoto(1600, 1200, 8);
    const [once, again] = [await finished(photo), await finished(photo.slice())];
    expect(once.map(({ bytes }) => Buffer.from(bytes).toString('base64'))).toEqual(
      again.map(({ bytes }) => Buffer.from(bytes).toString('base64')),
    );
  });

  it.each(['png', 'webp'] as const)('may be %s too; what is transparent becomes white', async (format) => {
    const clear = sharp({
      create: { width: 90, height: 60, channels: 4, background: { r: 0, g: 0, b: 0, alpha: 0 } },
    });
    const [copy] = await finished(new Uint8Array(await clear.toFormat(format).toBuffer()));
    expect(copy!.bytes.subarray(0, 2)).toEqual(Uint8Array.from([0xff, 0xd8]));
    expect(await cornersOf(copy!)).toEqual(['white', 'white', 'white', 'white']);
  });

  it('in greys, or with sixteen bits a colour, is shown like any other', async () => {
    const grey = sharp({ create: { width: 90, height: 60, channels: 3, background: '#fff' } });
    const photo = await grey.toColourspace('grey16').png().toBuffer();
    expect(await cornersOf((await finished(new Uint8Array(photo)))[0]!)).toEqual(Array(4).fill('white'));
  });
});

describe('a photo that cannot be published', () => {
  it('is told broken when half of it is missing', async () => {
    const photo = await phonePhoto(640, 480);
    expect(await finishPhoto(photo.subarray(0, photo.length / 2))).toEqual({ trouble: 'broken' });
  });

  it.each([
    ['nothing', new Uint8Array()],
    ['the first bytes of a JPEG', Uint8Array.from([0xff, 0xd8, 0xff, 0xd9])],
    ['words', new TextEncoder().encode('not a photo')],
  ])('is told broken when it is %s', async (_, bytes) => {
    expect(await finishPhoto(bytes)).toEqual({ trouble: 'broken' });
  });

  it('is told too large before its points are unpacked', async () => {
    const huge = await sharp({ create: { width: 15000, height: 9000, channels: 3, background: '#888' } })
      .png({ compressionLevel: 1 })
      .toBuffer();
    expect(await finishPhoto(new Uint8Array(huge))).toEqual({ trouble: 'too-large', points: 135_000_000 });
  }, 30_000);
});
