import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { planRefusals, planWarnings } from '../../src/words/diagnostics/plan.ts';

const folder = fileURLToPath(new URL('../../src/core/plan', import.meta.url));
const source = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => readFileSync(`${folder}/${name}`, 'utf8'))
  .join('\n');

/** Codes that the planner gives by name: `warning('tool-short', …)`. */
const codesOf = (kind: 'warning' | 'refusal') =>
  [...source.matchAll(new RegExp(`\\b${kind}\\(\\s*'([a-z-]+)'`, 'g'))].map(([, code]) => code!);

/** Codes with a sentence, of their own or of a variant. */
const known = (family: Readonly<Record<string, unknown>>): readonly string[] =>
  Object.keys(family).map((key) => key.split('.')[0]!);

it('the catalogue has a sentence for every warning and refusal of the planner', () => {
  expect(codesOf('warning').length).toBeGreaterThan(8);
  expect(codesOf('warning').filter((code) => !known(planWarnings).includes(code))).toEqual([]);
  expect(codesOf('refusal').filter((code) => !known(planRefusals).includes(code))).toEqual([]);
});

it('and none for a warning that the planner does not give', () => {
  expect(known(planWarnings).filter((code) => !codesOf('warning').includes(code))).toEqual([]);
});
