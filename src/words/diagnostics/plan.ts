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
  'piece-fits-no-pack': {
    says: '{material}: a piece is larger than every sheet, roll or length that it is sold in.',
    act: 'a larger pack',
  },
  'builders-out-of-range': {
    says: '{builders} builders were asked for; there may be 1 to {most}.',
    write: '--builders 2   your own number',
  },
  'effort-out-of-range': {
    says: 'An effort of {effort} was asked for; it is a number above 0, up to {most}.',
    write: '--effort 4   four times the usual search',
  },
  'margin-out-of-range': {
    says: 'A margin of {margin} minutes was asked for; it is a whole number from 0 to {most}.',
    write: '--margin 2h   your own length of time',
  },
  'start-and-ready-by': {
    says: 'A plan runs forwards from its start or backwards from the time when all is ready, and both were set: {start} and {readyBy}.',
    write: '--ready-by {readyBy}   or the start, not both',
  },
  'ready-by-missing.margin': {
    says: 'A margin was set, but no time by which all is to be ready.',
    write: '--ready-by 2026-11-30T09:00   your own day and time',
  },
  'ready-by-missing.goodUntil': {
    says: 'It was set until when the models must be good, but not by when they are to be ready.',
    write: '--ready-by 2026-11-30T09:00   your own day and time',
  },
  'good-until-too-early': {
    says: 'The models are to be good until {goodUntil}, which is before they are to be ready: {readyBy}.',
    write: '--good-until {readyBy}   or later',
  },
  'time-unreadable': {
    says: '“{time}” is no day and time that can be read without guessing.',
    why: 'Year, month, day, hour and minute, in this order and with zeros, mean the same everywhere.',
    write: '{option} 2026-11-30T09:00   your own day, and the time by the clock on the wall',
  },
  'time-outside-zone': {
    says: '{time} cannot be planned: the clock of {zone} is known from {first} to {last}.',
    write: '{option} …   a day in between',
  },
  'time-skipped': {
    says: '{time} does not exist: the clocks go forward from {from} to {until} on that day.',
    write: '{option} …   a time before {from}, or from {until} on',
  },
  'time-in-the-past': {
    says: '{time} has gone by: today is {today}.',
    write: '{option} …   today, or a day to come',
  },
};

/** What the reader of a plan should know. Facts that are names may be lists: “A, B and C”. */
export const planWarnings: ProblemFamily = {
  'batch-much-larger': {
    says: '{material}: this batch of {made} takes about {times} times what the author’s own batch of {own} does. What is safe for a few may not be for many: this is now the use of a chemical at a workplace, with the rules that your place has for it. Ask those in charge of safety before you begin.',
  },
  'first-goes-off': {
    says: '{guide}: the first model is no longer good when the last one is ready. Make them in smaller batches, with more builders, or nearer to the day of use.',
  },
  'more-made': {
    says: '{guide}: {made} are made where {good} would do, {extra} more, because some runs are always full.',
  },
  'price-missing': { says: 'No price known: {material}. Every sum that it enters is “at least”.' },
  'stock-without-size': {
    says: '{material} is cut into pieces, and the stock file says how much there is of it, not in what sizes: nothing is cut from that. List it as sheets or offcuts, width x length.',
  },
  'amount-beside-pieces': {
    says: 'Cut into pieces, and used by amount as well: {material}. The amount is taken from what the pieces leave; whether it can be cut out of that is not checked.',
  },
  'opened-goes-off': {
    says: '{material}: a pack that is opened {from} is good until {until}, and still in use {last}. Order smaller packs, or make the models nearer together.',
  },
  'opened-goes-off.closed': {
    says: '{material}: a pack that comes {from} is good until {until} and first opened {last}. Order it later, or make the models sooner.',
  },
  'rest-goes-off': { says: 'Once opened, use the rest within {within}: {material}.' },
  'faster-pack': {
    says: '{material}: another pack would be there sooner. All would be ready {earlier} earlier, for {cost} more.',
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
    says: '{supplier}: spend {missing} more there, and delivery, now {charge}, is free.',
  },
};
