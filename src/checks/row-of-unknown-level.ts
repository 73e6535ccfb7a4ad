import type { RowsWithLevels } from '../core/model/guide.ts';
import type { Check } from './check.ts';
import type { GuideRead } from './context.ts';
import { namedIn, the, unknownNames } from './unknown-names.ts';

/** A level in an `only`, that the guide does not have. */
export const rowOfUnknownLevel: Check = {
  code: 'row-of-unknown-level',
  gravity: 'stops',
  find: ({ guides }) =>
    guides.flatMap((read) => {
      const named = Object.keys(nouns).flatMap((list) => onlyIn(read, list as RowsWithLevels));
      return unknownNames(
        named,
        read.guide.levels.map(({ id }) => id),
      );
    }),
};

const nouns: Readonly<Record<RowsWithLevels, string>> = {
  materials: 'material',
  mixes: 'mix',
  tools: 'tool',
  steps: 'step',
  checks: 'check',
  cautions: 'caution',
};

function onlyIn(read: GuideRead, list: RowsWithLevels) {
  return read.guide[list].flatMap((row, i) => {
    const who = the(nouns[list], 'id' in row ? row.id : row.use);
    return namedIn(read, row.only ?? [], who, list, i, 'only');
  });
}
