import type { Reading } from '../../../src/core/quantity/problem.ts';
import { expect } from 'vitest';

/** The value of a text that is read. */
export function valueOf<T>(reading: Reading<T>): T {
  expect(reading, JSON.stringify(reading)).toHaveProperty('ok', true);
  return (reading as { value: T }).value;
}

/** `unit-unknown.near`, with the facts beside the text. */
export function problemOf(
  reading: Reading<unknown>,
): [code: string, facts: Readonly<Record<string, string>>] {
  expect(reading, JSON.stringify(reading)).toHaveProperty('ok', false);
  const { code, variant, facts } = (reading as Extract<Reading<unknown>, { ok: false }>).problem;
  const others = Object.fromEntries(Object.entries(facts).filter(([key]) => key !== 'text'));
  return [variant ? `${code}.${variant}` : code, others];
}
