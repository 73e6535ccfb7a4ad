import type { ProblemFamily } from './sentences.ts';

/** What may hurt somebody. The wording of a caution, and how severe it is, is never ours. */
export const safetyFindings: ProblemFamily = {
  'caution-incomplete.avoid': {
    says: 'The {signal} “{caution}” does not say how to avoid the hazard.',
    why: 'A safety message names the hazard, the harm and how to avoid it (ANSI Z535.6).',
    write: 'avoid: […]   what to do, in your own words: you know the bench',
  },
  'caution-incomplete.harm': {
    says: 'The {signal} “{caution}” does not say what harm the hazard does.',
    why: 'A safety message names the hazard, the harm and how to avoid it (ANSI Z535.6); a notice, on damage to things, may leave the harm out.',
    write: 'harm: …   in your own words: you know the bench',
  },
  'hazard-code-unknown': {
    says: '{material} has the hazard code {hazard}, and there is no such code.',
    why: 'Codes of GHS are H2 to H4 with two more digits, such as H225; those of the EU alone begin with EUH.',
    write: 'H…   as section 2 of the supplier’s safety data sheet gives it',
  },
  'hazard-without-caution': {
    says: 'The step “{step}” can hurt somebody, and no caution names it: {dangers}.',
    why: 'What the caution says, and how severe it is, is for those who know the bench, the supplier’s safety data sheet and the program’s own policy. Where a caution that is there fits, add “{id}” to its steps.',
    write:
      '- id: …   in the cautions of the guide\n  signal: …   danger, warning or caution\n  steps: [{id}]\n  hazard: …\n  harm: …\n  avoid: […]',
  },
  'hazard-without-caution.notice': {
    says: 'The step “{step}” can hurt somebody, and only the notice “{notice}” names it: {dangers}.',
    why: 'A notice speaks of damage to things (ANSI Z535.6). How severe it is here is for those who know the bench and the program’s own policy.',
    write: 'signal: …   danger, warning or caution, with the harm that it does',
  },
  'hazard-without-control': {
    says: 'The step “{step}” can hurt somebody, and nothing is named that keeps people from harm: {dangers}.',
    why: 'Which protection is right is for the supplier’s safety data sheet and the program’s own policy to say.',
    write: 'controls: […]   at the step: ids of the list in the manual, or your own words',
  },
  'materials-must-not-meet': {
    says: 'The step “{step}” brings together {one} and {other}, which must not meet.',
    why: 'That they must not stands with {one}; its directions and its safety data sheet say what would happen.',
    act: 'another material for one of the two, or steps in which they do not meet',
  },
  'missing-clearing-time': {
    says: 'The step “{step}” gives off flammable vapour, and it is not said how long that takes to clear: {dangers}.',
    why: 'Until it is said, a plan may put a flame right after it. How long it takes depends on the room; those in charge of safety decide.',
    write: 'clears-in: …',
  },
  'missing-data-sheet': {
    says: '{material} has hazard codes, and it is not said from which safety data sheet.',
    why: 'The codes are those of one supplier’s product; whoever buys another has to compare.',
    write: 'data-sheet:\n  link: https://…   at the supplier of the product that you buy\n  dated: …',
  },
  'missing-data-sheet.link': {
    says: '{material} has hazard codes and a safety data sheet, but not where to find it.',
    write: 'link: https://…   at the supplier of the product that you buy',
  },
  'unknown-control': {
    says: '{who} names the control “{name}”, which is not in the published list.',
    why: 'What is written like an id of the list is looked up there; your own words stand as they are.',
    write: '{words}   in words; or one of: {known}',
  },
  'unknown-control.near': {
    says: '{who} names the control “{name}”, which is not in the published list; “{near}” comes near it.',
    write: '{paste}',
  },
  'vapour-near-ignition': {
    says: 'The step “{step}” is an ignition and gives off flammable vapour at once: {dangers}.',
    why: 'Vapour and ignition are kept apart in time, from step to step; within one step nobody can.',
    act: 'two steps in its place, one with the vapour and its clears-in, one with the ignition; or another product',
  },
};
