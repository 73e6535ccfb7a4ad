import type { Place } from '../core/diagnostic.ts';
import type { Check } from './check.ts';
import type { GuideRead } from './context.ts';
import { pictureKind } from './picture-kind.ts';

/** A picture that browsers do not show, or a file that is no picture at all. */
export const pictureKindUnknown: Check = {
  code: 'picture-kind-unknown',
  gravity: 'incomplete',
  find: (context) =>
    context.guides.flatMap((read) =>
      pictures(read).flatMap(({ file, place }) => {
        const bytes = context.bytesBeside(read.guide, file);
        const kind = bytes && pictureKind(bytes);
        if (!bytes || (kind !== undefined && kind !== 'heic')) return [];
        return [{ variant: kind, places: [place], facts: { file, better: asJpeg(file) } }];
      }),
    ),
};

/** What a page shows: pictures of the text, and what is right and wrong of a check. */
function pictures({
  guide,
  place,
  prose,
}: GuideRead): readonly { readonly file: string; readonly place: Place }[] {
  const ofChecks = guide.checks.flatMap((check, i) =>
    (['like', 'unlike'] as const).flatMap((key) => {
      const file = check[key];
      return file === undefined ? [] : [{ file, place: place('checks', i, key) }];
    }),
  );
  return [...guide.prose.images.map(({ file, at }) => ({ file, place: prose(at) })), ...ofChecks];
}

/** `photos/pour.HEIC` -> `photos/pour.jpg` */
function asJpeg(file: string): string {
  return file.replace(/\.[^./]*$/, '') + '.jpg';
}
