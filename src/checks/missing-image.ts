import type { Place } from '../core/diagnostic.ts';
import type { Guide } from '../core/model/guide.ts';
import { nearName } from '../core/near-name.ts';
import type { Check, Finding } from './check.ts';
import type { GuideRead } from './context.ts';
import { the } from './unknown-names.ts';

/** A picture or a drawing that does not lie in the guide's folder. */
export const missingImage: Check = {
  code: 'missing-image',
  gravity: 'incomplete',
  find: (context) =>
    context.guides.flatMap((read) => {
      const here = context.beside(read.guide);
      return [...pictures(read), ...namedFiles(read)].flatMap((picture) =>
        missing(picture, read.guide, here),
      );
    }),
};

/** A file that a guide names. */
interface Named {
  readonly file: string;
  readonly place: Place;
  /** Begins a sentence. */
  readonly who: string;
  readonly put: (file: string) => string;
}

function pictures({ guide, prose }: GuideRead): readonly Named[] {
  return guide.prose.images.map(({ file, alt, at }) => ({
    file,
    place: prose(at),
    who: 'The text',
    put: (other) => `![${alt || '…'}](${other})`,
  }));
}

/** Drawings of patterns, and photos of checks: right and wrong. */
function namedFiles({ guide, place }: GuideRead): readonly Named[] {
  const patterns = guide.patterns.map(({ id, file }, i) => ({
    file,
    place: place('patterns', i, 'file'),
    who: the('pattern', id),
    put: (other: string) => `file: ${other}`,
  }));
  const photos = guide.checks.flatMap((check, i) =>
    (['like', 'unlike'] as const).flatMap((key) => {
      const file = check[key];
      const put = (other: string) => `${key}: ${other}`;
      return file === undefined
        ? []
        : [{ file, place: place('checks', i, key), who: the('check', check.id), put }];
    }),
  );
  return [...patterns, ...photos];
}

function missing(
  { file, place, who, put }: Named,
  guide: Guide,
  here: readonly string[],
): readonly Finding[] {
  if (here.includes(file.replace(/^(\.\/)+/, ''))) return [];
  const isElsewhere = /^[a-z]+:|^\/\//i.test(file);
  const near = isElsewhere ? undefined : nearName(file, here);
  const facts = { who, file, folder: `guides/${guide.id}`, paste: put(near ?? '…') };
  if (near) return [{ variant: 'near', places: [place], facts: { ...facts, near } }];
  return [{ variant: isElsewhere ? 'elsewhere' : undefined, places: [place], facts }];
}
