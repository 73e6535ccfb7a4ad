import { exactText, zero } from '../core/quantity/exact.ts';
import { secondsOf } from '../core/time/minutes.ts';
import type { Check } from './check.ts';
import { durationText, written } from './lookup/written.ts';

/** Preparation that takes trainees longer than they are promised. */
export const preparationOverPromise: Check = {
  code: 'preparation-over-promise',
  gravity: 'incomplete',
  find: ({ modules }) =>
    modules.flatMap(({ module: { prepare, promised, title }, place }) => {
      const sum = prepare.reduce((all, { takes }) => (takes ? all.add(secondsOf(takes)) : all), zero);
      if (!promised || sum.lte(secondsOf(promised))) return [];
      const at = place('promised');
      const timed = prepare.flatMap(({ takes }, i) => (takes ? [place('prepare', i, 'takes')] : []));
      const facts = { module: title, sum: durationText(exactText(sum)), promised: written(at) };
      return [{ places: [at, ...timed] as const, facts }];
    }),
};
