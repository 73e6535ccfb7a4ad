import type { Share } from '../../model/module.ts';

/** What decides how many models (or parts that wear) some people wear out. Whole numbers above zero. */
export interface Sharing {
  readonly people: number;
  /** Uses that each person makes. */
  readonly uses: number;
  /** Uses that a model is good for. */
  readonly lasts: number;
  /** Models in use at once: seats that the people leave empty hold none. */
  readonly seats: number;
  /** People at one model at a time. */
  readonly atOne: number;
  /** Turns at each seat. */
  readonly rounds: number;
}

/**
 * Models to have ready so that nobody practises on a worn one; never fewer than are in use at once.
 *
 *     20 people, 3 uses each, 12 uses a model; 2 seats with 2 people, 5 rounds
 *     mixed   60 uses / 12                    5
 *     whole   4 people a model                5
 *     seat    30 uses at each seat, 3 models  6
 *     own     one each                       20
 */
export function modelsNeeded(share: Share, sharing: Sharing): number {
  return Math.max(sharing.seats, worn[share](sharing));
}

const worn: Readonly<Record<Share, (sharing: Sharing) => number>> = {
  mixed: ({ people, uses, lasts }) => Math.ceil((people * uses) / lasts),
  whole: ({ people, uses, lasts }) =>
    uses > lasts ? people * Math.ceil(uses / lasts) : Math.ceil(people / Math.floor(lasts / uses)),
  seat: ({ seats, rounds, atOne, uses, lasts }) => seats * Math.ceil((rounds * atOne * uses) / lasts),
  own: ({ people, uses, lasts }) => people * Math.max(1, Math.ceil(uses / lasts)),
};
