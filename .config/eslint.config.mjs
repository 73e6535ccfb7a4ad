import js from '@eslint/js';
import { defineConfig } from 'eslint/config';
import tseslint from 'typescript-eslint';

export default defineConfig(
  { ignores: ['dist/', 'site/', 'coverage/', 'node_modules/', '.mutants/'] },
  js.configs.recommended,
  tseslint.configs.strict,
  {
    languageOptions: { parserOptions: { ecmaFeatures: { jsx: true } } },
    rules: {
      // `!` says that an index was checked a line before; noUncheckedIndexedAccess makes it frequent.
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-dynamic-delete': 'off',
      complexity: ['error', 16],
      'max-lines': ['error', { max: 320, skipBlankLines: true, skipComments: true }],
      'no-console': 'error',
      eqeqeq: ['error', 'always'],
      // Control characters are what some patterns look for.
      'no-control-regex': 'off',
    },
  },
  {
    files: ['tests/**', '.config/**'],
    languageOptions: { globals: { process: 'readonly', console: 'readonly', URL: 'readonly' } },
    rules: { 'max-lines': 'off', 'no-console': 'off', complexity: 'off' },
  },
);
