/**
 * How often a property is tried: so many times, or the part of it that `RUNS` names. Whoever breaks the core on purpose
 * runs the tests thousands of times, and lets each try less.
 */
export function runs(many: number): number {
  return Math.ceil(many * Number(process.env['RUNS'] ?? 1));
}
