import type { RowsWithLevels } from '../core/model/guide.ts';
import type { Check, Finding } from './check.ts';
import type { GuideRead } from './lookup/context.ts';
import { namedIn, the, unknownNames } from './lookup/unknown-names.ts';

/** A row that is for a level alone which the guide does not have, or for none. */
export const rowOfUnknownLevel: Check = {
  code: 'row-of-unknown-level',
  gravity: 'stops',
  find: ({ guides }) => guides.flatMap(ofGuide),
};

function ofGuide(read: GuideRead): readonly Finding[] {
  const levels = read.guide.levels.map(({ id }) => id);
  const rows = lists.flatMap((list) =>
    read.guide[list].map(({ only }, index) => ({ only, list, index, who: whoIs(read, list, index) })),
  );
  const named = rows.flatMap(({ only = [], list, index, who }) =>
    namedIn(read, only, who, list, index, 'only'),
  );
  const ofNone = rows.flatMap(({ only, list, index, who }) =>
    only?.length === 0
      ? [
          {
            variant: 'empty',
            places: [read.place(list, index, 'only')] as const,
            facts: { who, known: levels.join(', ') },
          },
        ]
      : [],
  );
  return [...unknownNames(named, levels), ...ofNone];
}

/** Lists whose rows may be for some levels only, with what a row of each is called. */
const nouns: Readonly<Record<RowsWithLevels, string>> = {
  materials: 'material',
  mixes: 'mix',
  tools: 'tool',
  steps: 'step',
  checks: 'check',
  cautions: 'caution',
};
const lists = Object.keys(nouns) as readonly RowsWithLevels[];

function whoIs({ guide }: GuideRead, list: RowsWithLevels, index: number): string {
  const row = guide[list][index]!;
  return the(nouns[list], 'id' in row ? row.id : row.use);
}
