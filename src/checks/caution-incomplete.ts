import type { Check } from './check.ts';

/**
 * A caution that does not say what harm is done, or how to avoid it. A notice speaks of damage to things, and may leave
 * the harm out.
 *
 * @source ANSI Z535.6 (2011): a safety message names the hazard, its consequence and how to avoid it.
 */
export const cautionIncomplete: Check = {
  code: 'caution-incomplete',
  gravity: 'stops',
  find: ({ guides }) =>
    guides.flatMap((read) =>
      read.guide.cautions.flatMap(({ id, signal, harm, avoid }, i) => {
        const facts = { caution: id, signal };
        const places = [read.place('cautions', i, 'id')] as const;
        return [
          ...(harm === undefined && signal !== 'notice' ? [{ variant: 'harm', places, facts }] : []),
          ...(avoid.length === 0 ? [{ variant: 'avoid', places, facts }] : []),
        ];
      }),
    ),
};
