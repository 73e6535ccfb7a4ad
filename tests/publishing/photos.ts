import sharp from 'sharp';

/** Corners of the motif as it is seen upright, clockwise from the top left. */
export const corners = ['red', 'lime', 'blue', 'white'] as const;
const cornerOf: Readonly<Record<string, string>> = {
  'top left': 'red',
  'top right': 'lime',
  'bottom right': 'blue',
  'bottom left': 'white',
};

/**
 * Which side of the motif the first row and the first column of what is stored show.
 *
 * @source EXIF 2.32 (CIPA DC-008-2019), 4.6.4, tag Orientation (from memory).
 */
const sides = {
  1: ['top', 'left'],
  2: ['top', 'right'],
  3: ['bottom', 'right'],
  4: ['bottom', 'left'],
  5: ['left', 'top'],
  6: ['right', 'top'],
  7: ['right', 'bottom'],
  8: ['left', 'bottom'],
} as const;
export type Orientation = keyof typeof sides;
export const orientations = [1, 2, 3, 4, 5, 6, 7, 8] as const satisfies readonly Orientation[];

const opposite = { top: 'bottom', bottom: 'top', left: 'right', right: 'left' } as const;
type Side = keyof typeof opposite;

/** The colours of what is stored, clockwise from its top left. */
function storedCorners(orientation: Orientation): readonly string[] {
  const [row, column] = sides[orientation];
  const between = (a: Side, b: Side): string => cornerOf[`${a} ${b}`] ?? cornerOf[`${b} ${a}`]!;
  return [
    between(row, column),
    between(row, opposite[column]),
    between(opposite[row], opposite[column]),
    between(opposite[row], column),
  ];
}

/** A photo as a phone makes it: stored under an orientation, with where, when and by what it was taken. */
export async function phonePhoto(
  width: number,
  height: number,
  orientation: Orientation = 1,
): Promise<Uint8Array> {
  const [w, h] = orientation > 4 ? [height, width] : [width, height];
  const bytes = await fourColours(w, h, storedCorners(orientation))
    .withMetadata({ orientation })
    .withExifMerge({
      IFD0: { Make: 'Invented phone', DateTime: '2026:11:25 09:00:00' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1' },
    })
    .jpeg({ quality: 95 })
    .toBuffer();
  return new Uint8Array(bytes);
}

function fourColours(width: number, height: number, [a, b, c, d]: readonly string[]) {
  const [w, h] = [Math.ceil(width / 2), Math.ceil(height / 2)];
  const patch = (background: string | undefined, left: number, top: number) => ({
    input: { create: { width: w, height: h, channels: 3 as const, background: background! } },
    left,
    top,
  });
  return sharp({ create: { width, height, channels: 3, background: 'white' } }).composite([
    patch(a, 0, 0),
    patch(b, width - w, 0),
    patch(c, width - w, height - h),
    patch(d, 0, height - h),
  ]);
}
