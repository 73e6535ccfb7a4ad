import { controlWords } from '../words/index.ts';
import type { Check } from './check.ts';
import { isLikeAnId } from './lookup/names.ts';
import { namedIn, the, unknownNames } from './lookup/unknown-names.ts';

/** A control that is written like an id of the published list, and is none: it would be printed as it stands. */
export const unknownControl: Check = {
  code: 'unknown-control',
  gravity: 'incomplete',
  find: ({ guides }) =>
    guides.flatMap((read) => {
      const named = read.guide.steps.flatMap(({ id, controls }, i) =>
        namedIn(read, controls, the('step', read.stepName(id)), 'steps', i, 'controls'),
      );
      const found = unknownNames(
        named.filter(({ name }) => isLikeAnId(name)),
        Object.keys(controlWords),
      );
      return found.map((finding) => ({
        ...finding,
        facts: { ...finding.facts, words: inWords(finding.facts['name']!) },
      }));
    }),
};

const inWords = (id: string): string => id.replaceAll('-', ' ');
