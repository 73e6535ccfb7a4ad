import type { ProblemFamily } from './sentences.ts';

/** Sums of money that cannot be read. */
export const moneyProblems: ProblemFamily = {
  'currency-missing': {
    says: 'The {what} is {text}, and not said in which currency.',
    write: '{put}{number} …   and the code of the currency, such as GBP',
  },
  'currency-missing.comma': {
    says: 'The {what} is {text}, and a comma in a number is read in two ways; nor is it said in which currency.',
    write:
      '{put}{point} …   with the code of the currency, such as GBP, if the comma is the decimal point\n{put}{thousands} …   if it parts thousands',
  },
  'currency-missing.euro': {
    says: 'The {what} is {text}, and money is told by its code.',
    write: '{put}{number} EUR',
  },
  'currency-missing.symbol': {
    says: 'The {what} is {text}, and “{symbol}” is the sign of more than one currency.',
    write: '{put}{number} …   and the code of the currency, such as GBP',
  },
  'currency-unknown': {
    says: 'The {what} is “{text}”, and “{currency}” is no currency of ISO 4217.',
    write: '{put}{number} …   and the code of the currency: three capital letters, such as GBP',
  },
  'currency-unknown.near': {
    says: 'The {what} is “{text}”, and “{currency}” is no currency of ISO 4217; “{nearest}” comes near it.',
    write: '{put}{number} {nearest}',
  },
  'currency-code-unknown': {
    says: '“{text}” is no currency of ISO 4217.',
    write: '{put}…   its code: three capital letters, such as GBP',
  },
  'currency-code-unknown.near': {
    says: '“{text}” is no currency of ISO 4217; “{nearest}” comes near it.',
    write: '{put}{nearest}',
  },
  'currency-mixed': {
    says: 'The {what} goes from {first} to {second}, in two currencies.',
    write: '{put}…   both ends in the same currency',
  },
  'money-unreadable': {
    says: 'The {what} is “{text}”, and not a sum of money.',
    write: '{put}…   a number and the code of the currency, such as 6.40 GBP',
  },
  'unit-wrong.per-hour': { says: 'The {what} is {text}, and a wage is for an hour.', write: '{put}{text}/h' },
};
