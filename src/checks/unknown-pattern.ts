import type { Check } from './check.ts';
import { namedAt, the, unknownNames } from './lookup/unknown-names.ts';

/** A pattern that a piece is cut by, and that the guide does not have. */
export const unknownPattern: Check = {
  code: 'unknown-pattern',
  gravity: 'stops',
  find: ({ guides }) =>
    guides.flatMap((read) => {
      const { materials, patterns } = read.guide;
      const named = materials.flatMap(({ pieces }, row) =>
        pieces.flatMap(({ id, pattern }, i) =>
          namedAt(read, pattern, the('piece', id), 'materials', row, 'pieces', i, 'pattern'),
        ),
      );
      return unknownNames(
        named,
        patterns.map(({ id }) => id),
      );
    }),
};
