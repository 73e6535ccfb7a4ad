import { area } from './mutation-areas.mjs';

export default {
  testRunner: 'vitest',
  vitest: { configFile: '.config/mutation.vitest.config.ts', related: false },
  mutate: area.mutate,
  coverageAnalysis: 'perTest',
  ignoreStatic: true,
  concurrency: 2,
  reporters: ['clear-text', 'progress'],
  clearTextReporter: { allowColor: false, reportTests: false },
  tempDirName: '.mutants',
  cleanTempDir: 'always',
};
