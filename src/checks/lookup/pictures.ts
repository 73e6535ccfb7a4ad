import type { Place } from '../../core/diagnostic.ts';
import type { PaperRead } from './context.ts';
import { the } from './unknown-names.ts';

/** A file that a guide or a module names. */
export interface NamedFile {
  readonly file: string;
  readonly place: Place;
  /** Begins a sentence. */
  readonly who: string;
  /** What to write there for a file. */
  readonly put: (file: string) => string;
}

/** What a page shows: pictures of the text, and what is right and wrong of a check. */
export function picturesOf({ paper, place, prose }: PaperRead): readonly NamedFile[] {
  const ofText = paper.prose.images.map(({ file, alt, at }) => ({
    file,
    place: prose(at),
    who: 'The text',
    put: (other: string) => `![${alt || '…'}](${other})`,
  }));
  const checks = 'checks' in paper ? paper.checks : [];
  const ofChecks = checks.flatMap((check, i) =>
    (['like', 'unlike'] as const).flatMap((key) => {
      const file = check[key];
      const put = (other: string) => `${key}: ${other}`;
      return file === undefined
        ? []
        : [{ file, place: place('checks', i, key), who: the('check', check.id), put }];
    }),
  );
  return [...ofText, ...ofChecks];
}
