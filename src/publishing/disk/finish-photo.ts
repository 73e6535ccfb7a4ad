import type { OutputInfo, Sharp } from 'sharp';
import { limits } from '../../reading/limits.ts';

/** A picture at one size, as a file. */
export interface PictureCopy {
  readonly width: number;
  readonly height: number;
  readonly bytes: Uint8Array;
}

/** Why a photo cannot be published. */
export type PhotoTrouble =
  { readonly trouble: 'broken' } | { readonly trouble: 'too-large'; readonly points: number };

/** Points across that a page needs: a phone, a phone with a fine screen, a desk with one. */
const widths: readonly number[] = [480, 960, 1440];
/** A copy nearly as wide as the widest would be carried for nothing. */
const worthACopy = 0.75;

/**
 * A photo as pages need it: upright, at up to three widths and never larger than it is, in the colours of the web, on
 * white where it is transparent, as JPEG. Nothing else that its file said is left: no place, no time, no camera.
 *
 * @returns By rising width. Same photo, same bytes.
 * @source EXIF 2.32 (CIPA DC-008) 4.6.4, orientation: which way is up.
 */
export async function finishPhoto(bytes: Uint8Array): Promise<readonly PictureCopy[] | PhotoTrouble> {
  // Loaded when the first photo is there: commands without photos start without it.
  const { default: sharp } = await import('sharp');
  const settings = { failOn: 'error', limitInputPixels: limits.photoPoints, autoOrient: true } as const;
  try {
    const { width, height } = await sharp(bytes, { ...settings, limitInputPixels: false }).metadata();
    if (width * height > limits.photoPoints) return { trouble: 'too-large', points: width * height };
    const { data, info } = await widest(sharp(bytes, settings));
    const copies = widths.filter((wanted) => wanted < info.width * worthACopy);
    return await Promise.all(
      [...copies, info.width].map((wanted) => copyOf(sharp(data, { raw: info }), wanted)),
    );
  } catch {
    return { trouble: 'broken' };
  }
}

/** The points of the largest copy. No photo is so tall that it runs over more than two screens. */
function widest(
  photo: Sharp,
): Promise<{ readonly data: Buffer; readonly info: OutputInfo & { channels: 3 } }> {
  const most = widths.at(-1)!;
  return photo
    .resize({ width: most, height: 2 * most, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#fff' })
    .toColourspace('srgb')
    .raw()
    .toBuffer({ resolveWithObject: true }) as ReturnType<typeof widest>;
}

async function copyOf(points: Sharp, wanted: number): Promise<PictureCopy> {
  const made = points.resize({ width: wanted }).jpeg({ quality: 80 });
  const { data, info } = await made.toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, bytes: new Uint8Array(data) };
}
