import type { PlannedLine } from '../core/plan/result.ts';

/** Whose models something counts: `level` and `part` are left out where there is none. */
export function lineName({ guide, level, part }: PlannedLine) {
  return { guide, ...(level === undefined ? {} : { level }), ...(part === undefined ? {} : { part }) };
}
