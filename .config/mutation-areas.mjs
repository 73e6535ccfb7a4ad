const schedule = 'tests/core/solve/schedule';

/**
 * Parts of the core whose tests are tried with `AREA=packs npm run mutate`: what is changed there, and the tests that
 * must notice. Tests that are about a part are enough for it: each is run thousands of times; of the tries of its properties
 * `runs` are made, or a twentieth.
 */
const areas = {
  packs: {
    mutate: ['src/core/solve/packs/*.ts', 'src/core/plan/buy/*.ts'],
    tests: [
      'tests/core/solve/packs/**/*.test.ts',
      'tests/core/plan/buy/**/*.test.ts',
      'tests/core/plan/{buy,cut,orders}.test.ts',
      'tests/outside/pack-cover.test.ts',
    ],
  },
  units: {
    mutate: ['src/core/quantity/*.ts'],
    tests: ['tests/core/quantity/**/*.test.ts', 'tests/outside/{units,apportionment}.test.ts'],
  },
  schedule: {
    mutate: ['src/core/solve/schedule/*.ts'],
    tests: [`${schedule}/{answers,crew,feasible,feasible-rules,mirrored,schedule}.test.ts`],
  },
  'schedule-ground': {
    mutate: ['src/core/solve/schedule/ground/*.ts'],
    tests: [`${schedule}/ground/*.test.ts`, `${schedule}/{alike,calendar,cycles,schedule,usage}.test.ts`],
  },
  'schedule-placing': {
    mutate: ['src/core/solve/schedule/placing/*.ts'],
    tests: [`${schedule}/placing/*.test.ts`, `${schedule}/{cycles,schedule}.test.ts`],
  },
  'schedule-chain': {
    mutate: ['src/core/solve/schedule/chain/*.ts'],
    tests: [`${schedule}/critical-chain.test.ts`],
  },
  'schedule-exact': {
    mutate: ['src/core/solve/schedule/exact/*.ts'],
    tests: [`${schedule}/exact/*.test.ts`],
    runs: 0.02,
  },
  'schedule-search': {
    mutate: ['src/core/solve/schedule/search/*.ts'],
    tests: [`${schedule}/search/*.test.ts`, `${schedule}/{consecutive,justified,schedule}.test.ts`],
  },
  'schedule-plain': {
    mutate: ['src/core/solve/schedule/plain/*.ts'],
    tests: [`${schedule}/plain/*.test.ts`, 'tests/outside/cpm.test.ts'],
  },
  'schedule-of-plan': {
    mutate: ['src/core/plan/schedule/*.ts'],
    tests: [
      'tests/core/plan/schedule/*.test.ts',
      'tests/core/plan/{backwards,chain,finished,inserts,planned-schedule}.test.ts',
    ],
  },
  hazards: {
    mutate: ['src/core/model/ghs-label.ts', 'src/core/plan/scale/hazard*.ts'],
    tests: ['tests/core/plan/hazard*.test.ts', 'tests/outside/ghs.test.ts'],
  },
};

const asked = process.env.AREA ?? 'packs';
if (!Object.hasOwn(areas, asked)) throw new Error(`AREA is one of ${Object.keys(areas).join(', ')}.`);

export const area = areas[asked];
