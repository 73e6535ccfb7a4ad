import type { Check } from './check.ts';

/** A film without captions or a transcript: not everybody hears it. */
export const filmWithoutWords: Check = {
  code: 'film-without-words',
  gravity: 'incomplete',
  find: ({ modules }) =>
    modules.flatMap(({ module, place }) =>
      module.prepare.flatMap(({ kind, what, text }, i) =>
        kind === 'watch' && text === undefined
          ? [{ places: [place('prepare', i, 'watch')] as const, facts: { text: what } }]
          : [],
      ),
    ),
};
