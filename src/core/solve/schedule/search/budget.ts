import type { Ground } from '../ground/ground.ts';
import type { Score } from './score.ts';

/** What is left of a budget. */
export interface Left {
  schedules: number;
  placements: number;
}

export function isLeft({ schedules, placements }: Left): boolean {
  return schedules > 0 && placements > 0;
}

/** How long to go on where nothing better comes: until so much of a budget has gone by. */
export interface Patience {
  /** Something better has come. */
  readonly renew: () => void;
  readonly isOver: () => boolean;
}

export function patience(left: Left, part: number): Patience {
  const most = left.placements * part;
  let since = left.placements;
  return {
    renew: () => (since = left.placements),
    isOver: () => since - left.placements > most,
  };
}

/** To judge so many jobs costs as much as to place one. */
export const judged = 25;

/** Whether no schedule can be better, but for later starts. */
export function isIdeal({ bound, leastChanges }: Ground, [late, , changes, end]: Score): boolean {
  return late === 0 && end === bound && changes <= leastChanges;
}
