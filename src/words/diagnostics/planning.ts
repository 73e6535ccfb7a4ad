import type { ProblemFamily } from './sentences.ts';

/** Why a demand is not planned, and what the reader of a plan should know. No file is at fault in any of them. */
export const planningProblems: ProblemFamily = {
  'nothing-to-plan': {
    says: 'No guide is named, so there is nothing to plan.',
    write: 'GUIDE=12   the id of a guide, and how many models',
  },
  'unknown-guide': {
    says: 'There is no guide “{guide}”.',
    write: '{known}',
  },
  'unknown-guide.near': {
    says: 'There is no guide “{guide}”; “{near}” comes near it.',
    write: '{near}',
  },
  'unknown-guide.none': {
    says: 'There is no guide “{guide}”: this workspace has none at all.',
  },
  'unknown-level': {
    says: 'The guide “{guide}” has no level “{level}”.',
    write: '{known}',
  },
  'unknown-level.near': {
    says: 'The guide “{guide}” has no level “{level}”; “{near}” comes near it.',
    write: '{guide}:{near}',
  },
  'unknown-level.none': {
    says: 'The guide “{guide}” has no level “{level}”: it has no levels at all.',
    write: '{guide}',
  },
  'batch-out-of-range': {
    says: 'A batch of {wanted} of “{guide}” cannot be planned.',
    why: 'A batch is a whole number of models, from 1 to {most}.',
    write: '{guide}=12   your own number',
  },
  'builders-out-of-range': {
    says: 'A plan for {builders} builders cannot be made.',
    why: 'Builders are a whole number of people, from 1 to {most}.',
  },
  'too-many-made': {
    says: 'For this demand {made} of “{guide}” would have to be made, more than can be planned.',
    why: 'More are made than wanted where some fail, or where a run is always full. The most is {most}.',
  },
  'start-unreadable': {
    says: 'The start “{start}” is not a day and a time that can be read.',
    why: 'Year, month, day, hour and minute, in this order and with zeros, mean the same everywhere.',
    write: '2026-11-30T09:00   your own day and time',
  },
  'start-outside-zone': {
    says: 'The start {start} lies outside the years for which the clock of {zone} is known.',
    why: 'Clock changes are known from {first} to {last}.',
  },

  'batch-much-larger': {
    says: 'This batch takes {times} times as much {material} as the author’s own batch of {own} of “{guide}”.',
    why: 'More of it at once is another risk: ask whoever is responsible for your room, and read the safety data sheet again.',
  },
  'more-made': {
    says: '{made} of “{guide}” are made for {good}: {extra} more, since some runs are always full.',
  },
  'price-missing': {
    says: 'The price of {material} is not known, so every sum that it enters is “at least”.',
  },
  'bought-by-area': {
    says: '{material} is bought by area or length, without the gaps between pieces: lay the pieces out before you order.',
  },
  'station-not-listed': {
    says: 'The program does not say how many places “{station}” has, so the plan takes as many as it likes.',
  },
  'tool-not-listed': {
    says: 'The program does not say how many of “{tool}” it owns: the plan takes {peak} and counts them as bought.',
  },
  'tool-short': {
    says: '{peak} of “{tool}” are needed at once and {owned} are owned: the plan counts on {toBuy} more.',
  },
  'schedule-not-improved': {
    says: 'The schedule of {runs} runs is the first that was found: above {most} it is not improved.',
  },
  'arrival-unsaid': {
    says: 'Nobody says how long {material} takes to come, so the plan counts it as at hand.',
  },
  'free-delivery-near': {
    says: 'For {missing} more from {supplier} the delivery, {charge}, would cost nothing.',
  },
};
