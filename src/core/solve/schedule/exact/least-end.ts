import type { Obstacle } from '../problem.ts';
import type { EndBy } from './consequences.ts';
import { earliest, type Network } from './network.ts';

/**
 * The least end of everything that consequences alone do not refute: no schedule ends earlier.
 *
 * @param lower  No schedule ends earlier.
 * @param top    Only what ends before it counts.
 * @returns The end, or what refutes them all.
 * @source Destructive improvement; Klein and Scholl, Eur J Oper Res 112 (1999) (from memory).
 */
export function leastEnd(network: Network, endBy: EndBy, lower: number, top: number): number | Obstacle {
  const refuted = (minute: number): Obstacle | undefined => {
    const mark = network.distances.mark();
    const obstacle = endBy(minute);
    network.distances.back(mark);
    return obstacle;
  };
  const obstacle = refuted(top - 1);
  if (obstacle) return obstacle;
  let [low, high] = [Math.max(lower, earliest(network, network.end)), top - 1];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (refuted(middle)) low = middle + 1;
    else high = middle;
  }
  return low;
}
