import { nearName } from '../core/near-name.ts';
import type { Check, Finding } from './check.ts';
import type { PaperRead } from './lookup/context.ts';
import { picturesOf, type NamedFile } from './lookup/pictures.ts';
import { the } from './lookup/unknown-names.ts';

/** A picture or a drawing that does not lie in the folder of its guide or module. */
export const missingImage: Check = {
  code: 'missing-image',
  gravity: 'incomplete',
  find: ({ papers }) =>
    papers.flatMap((read) =>
      [...picturesOf(read), ...patternsOf(read)].flatMap((picture) => missing(picture, read)),
    ),
};

/** Drawings of the patterns that a guide cuts by. */
function patternsOf({ paper, place }: PaperRead): readonly NamedFile[] {
  const patterns = 'patterns' in paper ? paper.patterns : [];
  return patterns.map(({ id, file }, i) => ({
    file,
    place: place('patterns', i, 'file'),
    who: the('pattern', id),
    put: (other) => `file: ${other}`,
  }));
}

function missing({ file, place, who, put }: NamedFile, { folder, files }: PaperRead): readonly Finding[] {
  if (files.includes(file.replace(/^(\.\/)+/, ''))) return [];
  const isElsewhere = /^[a-z]+:|^\/\//i.test(file);
  const near = isElsewhere ? undefined : nearName(file, files);
  const facts = { who, file, folder, paste: put(near ?? '…') };
  if (near) return [{ variant: 'near', places: [place], facts: { ...facts, near } }];
  return [{ variant: isElsewhere ? 'elsewhere' : undefined, places: [place], facts }];
}
