import type { Check } from './check.ts';
import { pictureKind } from './lookup/picture-kind.ts';
import { picturesOf } from './lookup/pictures.ts';

/** A picture that browsers do not show, or a file that is no picture at all. */
export const pictureKindUnknown: Check = {
  code: 'picture-kind-unknown',
  gravity: 'incomplete',
  find: ({ papers, bytesIn }) =>
    papers.flatMap((read) =>
      picturesOf(read).flatMap(({ file, place }) => {
        const bytes = bytesIn(read.folder, file);
        const kind = bytes && pictureKind(bytes);
        if (!bytes || (kind !== undefined && kind !== 'heic')) return [];
        return [{ variant: kind, places: [place], facts: { file, better: asJpeg(file) } }];
      }),
    ),
};

/** `photos/pour.HEIC` -> `photos/pour.jpg` */
function asJpeg(file: string): string {
  return file.replace(/\.[^./]*$/, '') + '.jpg';
}
