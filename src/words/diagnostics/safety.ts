import type { ProblemFamily } from './sentences.ts';

/** What may hurt somebody. The wording of a caution, and how severe it is, is never ours. */
export const safetyFindings: ProblemFamily = {
  'allergens-unsaid': {
    says: 'Of these materials of “{guide}” it is not said whether they hold latex, animal tissue or a food allergen: {materials}.',
    why: 'The labels of the model say that none is named, and somebody may rely on it.',
    act: 'also: […] in the file of each material, with latex, animal-tissue or food-allergen; also: [] where it holds none',
  },
  'caution-in-text-alone': {
    says: 'The text of the step “{step}” says “Be careful”, and no caution names the step.',
    why: 'Only cautions stand at the head of the page, of the plan and of its sheets. What one says, and how severe it is, is for those who know the bench and the program’s own policy. Where a caution that is there fits, add “{id}” to its steps.',
    write:
      '- id: …   in the cautions of the guide\n  signal: …   danger, warning, caution or, where only things may be damaged, notice\n  steps: [{id}]\n  hazard: …\n  harm: …\n  avoid: […]',
  },
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
  'danger-in-no-step': {
    says: '{tool} ({dangers}) is in the list of tools, and no step has it in hand, so nobody is warned of it.',
    why: 'A step has the dangers of the tools that it takes; its cautions and controls are printed before it.',
    write: 'in: […]   the ids of the steps that take it',
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
  'looks-clinical': {
    says: '“{guide}” has in it what looks like clinical stock ({names}), and does not say that a model is kept apart from that.',
    why: 'Practice fluid that looked like the real one has been given to patients, and people were harmed.',
    write: 'store:   under in-use\n  apart: yes',
  },
  'missing-care': {
    says: '“{guide}” does not say how a model is stored, how it is cleaned and where a worn one goes.',
    why: 'Many hands touch it; needles or blades may be in it; and nobody may take it for what is used for patients.',
    write:
      'in-use:\n  after:\n    do: …\n  store:\n    how: …\n  dispose:\n    to: …   as the policy of your place has it',
  },
  'missing-care.clean': {
    says: '“{guide}” does not say how a model is cleaned, between two uses or afterwards.',
    why: 'Many hands touch it, and needles or blades may be in it.',
    write: 'after:   under in-use\n  do: …   or under between',
  },
  'missing-care.dispose': {
    says: '“{guide}” does not say where a worn model goes.',
    why: 'A model that lies about is used again, or for something else.',
    write: 'dispose:   under in-use\n  to: …   as the policy of your place has it',
  },
  'missing-care.store': {
    says: '“{guide}” does not say how a model is stored.',
    why: 'What keeps is only true as it is stored; and nobody may take it for what is used for patients.',
    write: 'store:   under in-use\n  how: …',
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
  'missing-data-sheet.date': {
    says: '{material} has hazard codes and a safety data sheet, but not of which day it is.',
    why: 'Suppliers change what is in a product, and then its sheet.',
    write: 'dated: …   as the sheet itself says',
  },
  'missing-data-sheet.link': {
    says: '{material} has hazard codes and a safety data sheet, but not where to find it.',
    write: 'link: https://…   at the supplier of the product that you buy',
  },
  'notice-of-injury': {
    says: 'The notice “{notice}” speaks of injury: “{word}”.',
    why: 'A notice is about damage to things (ANSI Z535.6). How severe it is, is for those who know the bench and the program’s own policy.',
    act: 'another signal, danger, warning or caution; nothing, if only things are meant',
  },
  'old-data-sheet': {
    says: 'The safety data sheet of {material} is of {dated}, more than three years before {today}.',
    why: 'Its supplier may have changed the product or the sheet since.',
    write: 'dated: …   of the newest sheet, once its codes are compared',
  },
  'stored-with-clinical-stock': {
    says: '“{guide}” lets a model stand among what is used for patients.',
    why: 'Somebody could take it for that. Pages and labels say that it is kept apart.',
    write: 'apart: yes',
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
  'vapour-outlasts-hold-limit': {
    says: 'The vapour of “{step}” clears in {clears} and “{next}”, an ignition, takes {handsOn}: more than the {limit} within which “{next}” must be done.',
    why: 'Both count from when hands leave “{step}”, and no flame is lit before the vapour has cleared, so this can never be planned. Whoever set the two times decides about them; neither is to be shortened or stretched to fit.',
    act: 'another product that gives off no vapour, or a way of doing “{next}” without flame and heat',
  },
};
