import { expect, it } from 'vitest';
import type { Diagnostic } from '../../src/core/diagnostic.ts';
import { findingsJson } from '../../src/exports/findings-json.ts';
import { jsonText } from '../../src/exports/json-text.ts';

const finding: Diagnostic = {
  code: 'unit-mismatch',
  variant: 'area',
  severity: 'warning',
  places: [{ file: 'materials/felt.yaml', line: 4, column: 12, length: 5, text: '  holds: 250 g' }],
  facts: { material: 'Felt' },
};

it('says code, severity, place and the whole message of each finding, and how many there are', () => {
  expect(findingsJson([finding, { ...finding, severity: 'error' }], ({ code }) => `about ${code}`)).toEqual({
    format: 'benchwright-findings/1',
    counts: { error: 1, warning: 1, note: 0 },
    findings: ['warning', 'error'].map((severity) => ({
      code: 'unit-mismatch',
      variant: 'area',
      severity,
      places: [{ file: 'materials/felt.yaml', line: 4, column: 12, length: 5 }],
      message: 'about unit-mismatch',
    })),
  });
});

it('ends its file with a line end', () => {
  expect(jsonText({ a: [] })).toBe('{\n  "a": []\n}\n');
});
