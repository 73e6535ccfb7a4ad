import type { Check } from './check.ts';

/** Verbs of what goes on inside a head. */
const unseen = ['appreciate', 'be aware', 'be familiar', 'grasp', 'know', 'learn', 'realise', 'understand'];

/**
 * An objective whose verb nobody can watch.
 *
 * @source Mager, Preparing Instructional Objectives (1962), from memory; the list of verbs is common practice.
 */
export const verbNotObservable: Check = {
  code: 'verb-not-observable',
  gravity: 'doubtful',
  find: ({ modules }) =>
    modules.flatMap(({ module, place }) =>
      module.objectives.flatMap(({ id, does }, i) => {
        const verb = unseen.find((one) => new RegExp(`^(to )?${one}\\b`, 'i').test(does));
        if (!verb) return [];
        return [{ places: [place('objectives', i, 'does')] as const, facts: { objective: id, verb } }];
      }),
    ),
};
