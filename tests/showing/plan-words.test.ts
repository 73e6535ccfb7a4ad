import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { planRefusals, planWarnings } from '../../src/words/diagnostics/plan.ts';

const folder = fileURLToPath(new URL('../../src/core/plan', import.meta.url));
const source = readdirSync(folder)
  .map((name) => readFileSync(`${folder}/${name}`, 'utf8'))
  .join('\n');

/** Codes that the planner gives by name: `warning('tool-short', …)`. */
const codesOf = (kind: 'warning' | 'refusal') =>
  [...source.matchAll(new RegExp(`\\b${kind}\\(\\s*'([a-z-]+)'`, 'g'))].map(([, code]) => code!);

it('the catalogue has a sentence for every warning and refusal of the planner', () => {
  expect(codesOf('warning').length).toBeGreaterThan(8);
  expect(codesOf('warning').filter((code) => !(code in planWarnings))).toEqual([]);
  expect(codesOf('refusal').filter((code) => !(code in planRefusals))).toEqual([]);
});

it('and none for a warning that the planner does not give', () => {
  expect(Object.keys(planWarnings).filter((code) => !codesOf('warning').includes(code))).toEqual([]);
});
