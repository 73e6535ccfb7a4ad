import type { Check } from './check.ts';

/** A model that its guide lets stand among what is used for patients: somebody could take it for that. */
export const storedWithClinicalStock: Check = {
  code: 'stored-with-clinical-stock',
  gravity: 'stops',
  find: ({ guides }) =>
    guides.flatMap(({ guide, place }) =>
      guide.inUse.store?.apart === false
        ? [{ places: [place('in-use', 'store', 'apart')] as const, facts: { guide: guide.title } }]
        : [],
    ),
};
