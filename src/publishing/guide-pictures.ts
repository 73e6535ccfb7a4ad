import type { Guide } from '../core/model/guide.ts';
import type { ReadWorkspace } from '../reading/read.ts';
import { pictureSize, type PictureSize } from '../rendering/picture-size.ts';
import { safeSvg } from '../rendering/safe-svg.ts';
import { safeFileName } from './paths.ts';

/** A picture of a guide as it is published. */
export interface PublishedPicture extends PictureSize {
  /** In the guide's folder of the site. */
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** The pictures that prose and checks of a guide name and that are there, by file as written. */
export function picturesOf(guide: Guide, read: ReadWorkspace): ReadonlyMap<string, PublishedPicture> {
  const checks = guide.checks
    .flatMap(({ like, unlike }) => [like, unlike])
    .filter((file) => file !== undefined);
  const files = new Set([...guide.prose.images.map(({ file }) => file), ...checks]);
  const pictures = new Map<string, PublishedPicture>();
  const taken = new Set<string>();
  for (const file of [...files].sort()) {
    const picture = published(file, read.files[pathOf(guide, file)], taken);
    if (picture) pictures.set(file, picture);
  }
  return pictures;
}

/** `./photos/a.jpg` of `guides/needle-block/guide.md` -> `guides/needle-block/photos/a.jpg`. */
function pathOf({ id }: Guide, file: string): string {
  return `guides/${id}/${file.replace(/^(\.\/)+/, '')}`;
}

function published(
  file: string,
  bytes: Uint8Array | undefined,
  taken: Set<string>,
): PublishedPicture | undefined {
  const size = bytes && pictureSize(bytes);
  if (!bytes || !size) return undefined;
  const safe = /\.svg$/i.test(file) ? safeSvg(bytes) : bytes;
  return safe && { name: freeName(safeFileName(file), taken), bytes: safe, ...size };
}

function freeName(name: string, taken: Set<string>): string {
  let free = name;
  for (let n = 2; taken.has(free); n++) free = name.replace(/(?=\.[^.]*$|$)/, `-${n}`);
  taken.add(free);
  return free;
}
