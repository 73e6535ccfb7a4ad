import { type Exact, exact, one } from '../../core/quantity/exact.ts';

/**
 * The greatest of …, 0.1, 0.2, 0.5, 1, 2, 5, … that is not above `x`: what scales and jugs are made with, and
 * what a scale beside a drawing is marked with.
 */
export function handyBelow(x: Exact): Exact {
  const ten = exact(10);
  let power = one;
  while (power.compare(x) > 0) power = power.div(ten);
  while (power.mul(ten).compare(x) <= 0) power = power.mul(ten);
  const steps = [5, 2, 1].map((n) => power.mul(n));
  return steps.find((step) => step.compare(x) <= 0)!;
}
