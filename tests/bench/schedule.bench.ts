import { bench, describe } from 'vitest';
import { schedule } from '../../src/core/solve/schedule/schedule.ts';
import { psplib, withGreatestLags, type Published } from '../outside/published-schedules.ts';

/**
 * How far the schedules end from the best ones known, by the number of schedules that may be tried. Read the ratios,
 * which are printed once each; the times depend on the machine.
 *
 * Sources: PSPLIB, Kolisch and Sprecher (1997); test sets UBO and SM, Schwindt (1998).
 */
describe.each([
  ['PSPLIB, 30 jobs', psplib.filter(({ name }) => name.startsWith('j30'))],
  ['PSPLIB, 60 and 120 jobs', psplib.filter(({ name }) => !name.startsWith('j30'))],
  ['least and greatest lags', withGreatestLags.filter(({ bestKnown }) => bestKnown !== undefined)],
] as const)('%s', (set, instances) => {
  for (const budget of [4, 100, 1000]) {
    let said = false;
    bench(
      `${budget} schedules`,
      () => {
        const ratio = meanRatio(instances, budget);
        if (!said) console.log(`${set}, ${budget} schedules: makespan / best known ${ratio}`);
        said = true;
      },
      { iterations: 1, warmupIterations: 0, time: 0, warmupTime: 0 },
    );
  }
});

function meanRatio(instances: readonly Published[], budget: number): string {
  const ratios = instances.flatMap(({ problem, bestKnown }) => {
    const result = schedule({ ...problem, budget });
    return 'starts' in result ? [result.makespan / bestKnown!] : [];
  });
  const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
  return `${mean.toFixed(4)} (${ratios.length} of ${instances.length} solved)`;
}
