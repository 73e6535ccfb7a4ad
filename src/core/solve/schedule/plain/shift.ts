import type { Draw } from '../../draw.ts';

/**
 * Shifts the keys of a few jobs that lie near each other, some five to thirty, earlier or later by chance: at most as
 * far as the window is wide that holds them.
 */
export function shift(keys: Float64Array, end: number, draw: Draw): void {
  const centre = (end * draw(1001)) / 1000;
  const reach = (end * (4 + draw(26))) / (2 * keys.length);
  for (let job = 0; job < keys.length; job++) {
    if (Math.abs(keys[job]! - centre) > reach) continue;
    keys[job]! += (2 * reach * (draw(2001) - 1000)) / 1000;
  }
}
