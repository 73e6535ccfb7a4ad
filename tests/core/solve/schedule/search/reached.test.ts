import fc from 'fast-check';
import { expect, it } from 'vitest';
import { atOnce } from '../../../../../src/core/in-pieces.ts';
import { branch } from '../../../../../src/core/solve/schedule/exact/branch.ts';
import { feasible } from '../../../../../src/core/solve/schedule/feasible.ts';
import { scheduling } from '../../../../../src/core/solve/schedule/general.ts';
import { randomLags } from '../exact/random-lags.ts';

/** Fixed problems without hours, so that branching can prove what the search should find. */
const problems = fc.sample(randomLags({ jobs: 7, minutes: 5 }), { numRuns: 150, seed: 20_261_128 });

it.each([
  { tries: 1, found: 0.9, best: 0.8 },
  { tries: 100, found: 0.98, best: 0.97 },
])('with $tries tries, $best of all problems and more end as early as they can', ({ tries, ...least }) => {
  const seen = { proven: 0, found: 0, best: 0 };
  for (const problem of problems) {
    const proof = branch(problem);
    if (!('proven' in proof && proof.proven)) continue;
    seen.proven++;
    const result = atOnce(scheduling({ ...problem, budget: tries }));
    if (!('starts' in result)) continue;
    seen.found++;
    expect(feasible(problem, result)).toBe(true);
    expect(result.makespan).toBeGreaterThanOrEqual(proof.makespan);
    if (result.makespan === proof.makespan) seen.best++;
  }
  expect(seen.proven).toBeGreaterThan(problems.length / 2);
  expect(seen.found / seen.proven).toBeGreaterThan(least.found);
  expect(seen.best / seen.proven).toBeGreaterThan(least.best);
});
