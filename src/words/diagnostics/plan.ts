import type { ProblemFamily } from './sentences.ts';

/** Why a demand is not planned: what was asked for cannot be found or is out of range. */
export const planRefusals: ProblemFamily = {
  'nothing-to-plan': {
    says: 'There is nothing to plan: no guide was named.',
    write: 'the id of a guide, and how many: needle-block=12',
  },
  'unknown-guide': {
    says: 'There is no guide “{guide}” in this workspace.',
    why: 'Its guides: {known}.',
    act: 'the id of a guide, which is the name of its folder',
  },
  'unknown-guide.near': {
    says: 'There is no guide “{guide}” in this workspace; “{near}” comes near it.',
    write: '{near}',
  },
  'unknown-guide.none': {
    says: 'There is no guide “{guide}”: this workspace has no guides yet.',
  },
  'unknown-level': {
    says: '“{guide}” has no level “{level}”.',
    why: 'Its levels: {known}.',
    write: '{guide}:…   one of them',
  },
  'unknown-level.near': {
    says: '“{guide}” has no level “{level}”; “{near}” comes near it.',
    write: '{guide}:{near}',
  },
  'unknown-level.none': {
    says: '“{guide}” has no levels, and “{level}” was asked for.',
    write: '{guide}',
  },
  'unknown-part': {
    says: '“{guide}” has no part “{part}”.',
    why: 'Its parts: {known}.',
    write: '{guide}/…   one of them',
  },
  'unknown-part.near': {
    says: '“{guide}” has no part “{part}”; “{near}” comes near it.',
    write: '{guide}/{near}',
  },
  'unknown-part.none': {
    says: '“{guide}” has no parts, and “{part}” was asked for.',
    write: '{guide}',
  },
  'part-without-steps': {
    says: 'No step of “{guide}” is for each “{part}”, so that part cannot be made alone.',
    write: '{guide}   the whole model',
  },
  'guide-in-itself': {
    says: 'The guide “{guide}” uses its own model as a material, directly or through another guide.',
    write: 'a material in its place, in one of those guides',
  },
  'batch-out-of-range': {
    says: '{wanted} of “{guide}” were asked for; a batch is a whole number from 1 to {most}.',
    write: '{guide}=12   your own number',
  },
  'too-many-made': {
    says: '{made} of “{guide}” would have to be made; {most} are the most that are planned.',
    why: 'More are made than wanted where some fail, or where a run is always full.',
    act: 'a smaller batch',
  },
  'builders-out-of-range': {
    says: '{builders} builders were asked for; there may be 1 to {most}.',
    write: '--builders 2   your own number',
  },
  'effort-out-of-range': {
    says: 'An effort of {effort} was asked for; it is a whole number, and at least 1.',
    write: '--effort 20000   so many schedules are tried',
  },
  'start-unreadable': {
    says: '“{start}” is no day and time to start at that can be read without guessing.',
    why: 'Year, month, day, hour and minute, in this order and with zeros, mean the same everywhere.',
    write: '--start 2026-11-30T09:00   your own day, and the time by the clock on the wall',
  },
  'start-outside-zone': {
    says: 'A start on {start} cannot be planned: the clock of {zone} is known from {first} to {last}.',
    write: '--start …   a day in between',
  },
};

/** What the reader of a plan should know. Facts that are names may be lists: “A, B and C”. */
export const planWarnings: ProblemFamily = {
  'batch-much-larger': {
    says: '{material}: this batch of {made} takes about {times} times what the author’s own batch of {own} does. What is safe for a few may not be for many: ask those in charge of safety before you begin.',
  },
  'first-goes-off': {
    says: '{guide}: the first model is no longer good when the last one is ready. Make them in smaller batches, with more builders, or nearer to the day of use.',
  },
  'more-made': {
    says: '{guide}: {made} are made where {good} would do, {extra} more, because some runs are always full.',
  },
  'price-missing': { says: 'No price known: {material}. Every sum that it enters is “at least”.' },
  'bought-by-area': {
    says: 'Bought by area or length: {material}. Whether the pieces fit on what is bought is not checked; lay them out before you order.',
  },
  'station-not-listed': {
    says: 'The program does not say how many places it has: {station}. The plan takes them to be enough.',
  },
  'tool-not-listed': {
    says: 'The program does not say how many it owns: {tool}. The plan buys as many as are used at once.',
  },
  'tool-short': {
    says: '{tool}: {peak} are used at once and {owned} owned; {toBuy} more to buy or to borrow.',
  },
  'schedule-not-improved': {
    says: '{runs} runs: above {most} the first schedule that was found is not improved. A shorter one may exist.',
  },
  'arrival-unsaid': {
    says: 'Nobody says how long delivery takes: {material}. The plan takes it to be at hand.',
  },
  'free-delivery-near': {
    says: '{supplier}: for {missing} more the delivery, now {charge}, would be free.',
  },
};
