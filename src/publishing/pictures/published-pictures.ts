import type { PictureCopy } from '../disk/finish-photo.ts';
import { freeName, safeFileName } from '../paths/paths.ts';
import { type Illustrated, pathOfPicture, type Pictures, picturesNamed } from './pictures.ts';

/** A picture as it is published: its copies by rising width, with their names in the folder of what shows it. */
export type PublishedPicture = readonly PublishedCopy[];

export interface PublishedCopy extends PictureCopy {
  readonly name: string;
}

/** The pictures that a guide or a module names and that are there, by file as written. */
export function picturesOf(of: Illustrated, pictures: Pictures): ReadonlyMap<string, PublishedPicture> {
  const published = new Map<string, PublishedPicture>();
  const taken = new Set<string>();
  for (const file of picturesNamed(of)) {
    const picture = pictures.get(pathOfPicture(of, file));
    if (picture?.kind === 'drawing') published.set(file, named(picture.copies, file, '.svg', taken));
    if (picture?.kind === 'photo') published.set(file, named(picture.copies, file, '.jpg', taken));
  }
  return published;
}

/** `Pour.PNG` of 1440 points across -> `pour-480.jpg`, `pour-960.jpg`, `pour-1440.jpg`; one copy alone has no width. */
function named(
  copies: readonly PictureCopy[],
  file: string,
  ending: string,
  taken: Set<string>,
): PublishedPicture {
  const stem = safeFileName(file).replace(/\.[^.]*$/, '');
  return copies.map((copy) => {
    const width = copies.length > 1 ? `-${copy.width}` : '';
    return { ...copy, name: freeName(`${stem}${width}${ending}`, taken) };
  });
}
