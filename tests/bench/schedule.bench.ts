import { bench, describe } from 'vitest';
import { schedule } from '../../src/core/solve/schedule/schedule.ts';
import { psplib, withGreatestLags, type Published } from '../outside/published-schedules.ts';

/**
 * How far the schedules end from the best ones known, by the number of schedules that may be tried. Read the distances,
 * which are printed once each; the times depend on the machine.
 *
 * Sources: PSPLIB, Kolisch and Sprecher (1997); test sets UBO and SM, Schwindt (1998).
 */
describe.each([
  ['PSPLIB, 30 jobs', psplib.filter(({ set }) => set === 'j30')],
  ['PSPLIB, 60 jobs', psplib.filter(({ set }) => set === 'j60')],
  ['PSPLIB, 120 jobs', psplib.filter(({ set }) => set === 'j120')],
  ['least and greatest lags', withGreatestLags.filter(({ bestKnown }) => bestKnown !== undefined)],
] as const)('%s', (set, instances) => {
  for (const budget of [1_000, 5_000, 20_000]) {
    let said = false;
    bench(
      `${budget} schedules`,
      () => {
        const distance = meanDistance(instances, budget);
        if (!said) console.log(`${set}, ${budget} schedules: ${distance}`);
        said = true;
      },
      { iterations: 1, warmupIterations: 0, time: 0, warmupTime: 0 },
    );
  }
});

function meanDistance(instances: readonly Published[], budget: number): string {
  const results = instances.map(({ problem }) => schedule({ ...problem, budget }));
  const distances = results.flatMap((result, index) =>
    'starts' in result ? [result.makespan / instances[index]!.bestKnown! - 1] : [],
  );
  const mean = distances.reduce((sum, distance) => sum + distance, 0) / distances.length;
  const proven = results.filter((result) => 'starts' in result && result.optimal).length;
  return `${(100 * mean).toFixed(2)} % above, ${distances.length} of ${instances.length} solved, ${proven} proven`;
}
