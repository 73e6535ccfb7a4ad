import type { Obstacle } from '../problem.ts';
import { pairsApart, settleApart } from './apart.ts';
import type { Network } from './network.ts';
import { timetable } from './timetable.ts';

/** Lets everything end by a minute, and settles all that follows. What proves that nothing can, if anything does. */
export type EndBy = (minute: number) => Obstacle | undefined;

export function consequencesOf(network: Network): EndBy {
  const { distances, uses, begin, end } = network;
  const rules = [
    ...pairsApart(network).map((pair) => () => settleApart(network, pair)),
    ...uses.map((use) => () => timetable(network, use)),
  ];
  return (minute) => {
    if (!distances.settle(end, begin, -minute)) return { because: 'deadline', jobs: [] };
    for (let mark = -1; mark < distances.mark();) {
      mark = distances.mark();
      for (const rule of rules) {
        const obstacle = rule();
        if (obstacle) return obstacle;
      }
    }
    return undefined;
  };
}
