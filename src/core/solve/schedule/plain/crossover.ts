import type { Draw } from '../../draw.ts';
import type { Pass } from './serial-pass.ts';

/**
 * Keys that follow one schedule within a stretch of its time, a fifth to three fifths of it, and another one elsewhere.
 *
 *     one     a--b--|d--c--e|--f--g
 *     other   b--a--|c--e--f|--d--g      ->  keys   b--a--d--c--e--f--g
 */
export function crossed(one: Pass, other: Pass, draw: Draw): Float64Array {
  const length = (one.end * (20 + draw(41))) / 100;
  const from = (one.end - length) * (draw(101) / 100);
  return other.starts.map((key, job) => {
    const start = one.starts[job]!;
    return from <= start && start <= from + length ? start : key;
  });
}
