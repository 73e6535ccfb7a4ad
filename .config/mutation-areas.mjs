/**
 * Parts of the core whose tests are tried with `AREA=packs npm run mutate`: what is changed there, and the tests that
 * must notice.
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
    mutate: ['src/core/solve/schedule/**/*.ts', 'src/core/plan/schedule/*.ts'],
    tests: [
      'tests/core/solve/schedule/**/*.test.ts',
      'tests/core/plan/**/*.test.ts',
      'tests/outside/cpm.test.ts',
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
