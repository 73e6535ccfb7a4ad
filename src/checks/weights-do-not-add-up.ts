import { exact, exactText, zero } from '../core/quantity/exact.ts';
import type { Check } from './check.ts';
import { written } from './lookup/written.ts';

/** Weights of the items that come to another sum than their module says. */
export const weightsDoNotAddUp: Check = {
  code: 'weights-do-not-add-up',
  gravity: 'stops',
  find: ({ modules }) =>
    modules.flatMap(({ module: { scoring }, place }) => {
      if (scoring?.total === undefined) return [];
      const sum = scoring.items.reduce((total, { weight }) => total.add(exact(weight)), zero);
      if (sum.equals(exact(scoring.total))) return [];
      const at = place('scoring', 'total');
      return [{ places: [at] as const, facts: { sum: exactText(sum), total: written(at) } }];
    }),
};
