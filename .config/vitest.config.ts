import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  oxc: { jsx: { runtime: 'automatic', importSource: 'hastscript' } },
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    benchmark: { include: ['tests/bench/**/*.bench.ts'] },
    globalSetup: ['tests/browser/run-folder.ts'],
    setupFiles: ['.config/same-chance.ts'],
    testTimeout: 60_000,
    reporters: ['default'],
  },
});
