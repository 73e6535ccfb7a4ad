import type { ProblemFamily } from './sentences.ts';

/** Amounts, sizes, counts and shares that cannot be read, as core's readers find them. */
export const amountProblems: ProblemFamily = {
  'amount-negative': {
    says: 'The {what} is {text}, and cannot be below nothing.',
    write: '{put}…   without the minus',
  },
  'amount-not-whole': {
    says: 'The {what} is {text}, and has to be a whole number.',
    write: '{put}…   a whole number',
  },
  'amount-unreadable': {
    says: 'The {what} is “{text}”, and not an amount that can be read.',
    why: 'An amount is a number and a unit, such as 350 g, 1.5 L or 2 1/2 in; a count is a bare number.',
    write: '{put}…   a number and a unit',
  },
  'amount-unreadable.exponent': {
    says: 'The {what} is {text}, a number with an exponent.',
    write: '{put}…   the number written out',
  },
  'amount-unreadable.underscore': {
    says: 'The {what} is {text}, a number with an underscore.',
    write: '{put}…   the digits without it',
  },
  'amount-unreadable.leading-zero': {
    says: 'The {what} is {text}, a number that begins with a zero.',
    write: '{put}…   without the zero, or with a point after it',
  },
  'amount-unreadable.leading-point': {
    says: 'The {what} is {text}, and a number that begins with a point is easily read tenfold.',
    write: '{put}0{text}',
  },
  'amount-unreadable.grouped': {
    says: 'The {what} is {text}, a number whose digits stand in groups.',
    write: '{put}…   the digits without gaps',
  },
  'amount-unreadable.too-long': {
    says: 'The {what} is a number with more digits than anything that is made.',
    write: '{put}…   a shorter number',
  },
  'amount-unreadable.mixed-hyphen': {
    says: 'The {what} is {text}, which could be a range or a mixed number.',
    write: '{put}{meant}   if that is meant',
  },
  'amount-unreadable.extra': {
    says: 'The {what} is “{text}”: after {amount} comes “{extra}”, which is no part of an amount.',
    write: '{put}{amount}',
  },
  'amount-unreadable.two-numbers': {
    says: 'The {what} is “{text}”, which does not tell which of the two numbers is of what.',
    write: '{put}…   one number, such as 1/4: so much for one of the other',
  },
  'amount-unreadable.uses': {
    says: 'The {what} is “{text}”, and how often something serves is a bare number.',
    write: '{put}{number} uses',
  },
  'amount-unreadable.about': {
    says: 'The {what} is “{text}”, and it is not said how far it may be from that.',
    why: 'Others build by it. Where it may vary, a range says from what to what.',
    write: '{put}{amount}   or a range',
  },
  'amount-unreadable.container': {
    says: 'The {what} is “{text}”: what it comes in does not belong there.',
    write: '{put}{amount}',
  },
  'amount-unreadable.in-words': {
    says: 'The {what} is “{text}”, and a count is written in figures.',
    write: '{put}{number}',
  },
  'amount-unreadable.paper': {
    says: 'The {what} is “{text}”, the name of a size and not its sides.',
    why: 'Board is not always cut to the size that it is named by.',
    write: '{put}{size}   or as you measure it',
  },
  'amount-unreadable.size': {
    says: 'The {what} is “{text}”, and not a size of two sides, or three of a body.',
    write: '{put}…   such as 150 mm x 100 mm',
  },
  'amount-unreadable.holding': {
    says: 'The {what} is “{text}”, and not what a pack holds.',
    write: '{put}…   such as 500 g, 50, 3 m, 450 mm x 300 mm or 5 x 450 mm x 300 mm',
  },
  'amount-unreadable.density': {
    says: 'The {what} is “{text}”, and not a mass in a volume.',
    write: '{put}…   measured, such as 0.6 g/mL',
  },
  'amount-unreadable.iso': {
    says: 'The {what} is “{text}”, which begins like a time of ISO 8601 and goes on otherwise.',
    write: '{put}…   such as PT2H30M, or 2 h 30 min',
  },
  'people-to-one-unreadable': {
    says: 'The {what} is “{text}”; how many people there are to one instructor is a bare number.',
    write: '{put}{count}',
  },
  'people-to-one-unreadable.neither-one': {
    says: 'The {what} is “{text}”; how many people there are to one instructor is a bare number.',
    write: '{put}…   how many to one instructor, at most',
  },
  'amount-zero': { says: 'The {what} is nothing, and has to be more.', write: '{put}…   more than zero' },
  'clock-time-as-amount': {
    says: 'The {what} is {text}, a time of the day, where a length of time or an amount belongs.',
    write: '{put}…   such as 45 min or 2 h 30 min',
  },
  'decimal-comma': {
    says: 'The {what} is {text}, and a comma in a number is read in two ways.',
    write: '{put}{point}   if the comma is the decimal point\n{put}{thousands}   if it parts thousands',
  },
  'range-mixed': {
    says: 'The {what} goes from {first} to {second}, and the two cannot be compared.',
    write: '{put}…   both ends in the same unit',
  },
  'range-not-here': {
    says: 'The {what} is {text}, a range where one amount belongs.',
    write: '{put}…   one amount',
  },
  'range-not-here.tolerance': {
    says: 'The {what} is {text}, an amount with a tolerance where one amount belongs.',
    write: '{put}…   the amount alone; a tolerance belongs to the target of a check',
  },
  'range-reversed': {
    says: 'The {what} goes from {least} down to {most}.',
    write: '{put}…   the smaller end first',
  },
  'share-above-one': {
    says: 'The {what} is {text}, more than the whole.',
    write: '{put}…   such as 9 of 10',
  },
  'share-above-one.left-behind': {
    says: 'The {what} is {text}, so that nothing would be left to use.',
    write: '{put}…   below 100 %',
  },
  'share-without-percent': {
    says: 'The {what} is {text}, and it is not said of what.',
    write: '{put}{percent}',
  },
  'unit-ambiguous': {
    says: 'The {what} is {text}, and “{unit}” is the short name of more than one unit.',
    write: '{put}…   one of {choices}',
  },
  'unit-ambiguous.degrees': {
    says: 'The {what} is “{text}”, and degrees may be those of a heat or of an angle.',
    why: 'A step with a heat that burns needs a caution, and 60 °C and 60 °F are far apart.',
    write: '{put}{celsius}   or °F\n{put}{number} degrees from level   if it is an angle: from what',
  },
  'unit-missing.time': {
    says: 'The {what} is {text}, and not said in which unit of time.',
    write: '{put}{number} min   or s, h, d',
  },
  'unit-missing.length': {
    says: 'The {what} is {text}, sides without a unit.',
    write: '{put}…   a unit after each side, such as 150 mm x 100 mm',
  },
  'unit-not-here': {
    says: 'The {what} is {text}, and belongs without a unit.',
    write: '{put}…   the number alone',
  },
  'unit-system-missing': {
    says: 'The {what} is {text}, and “{unit}” is not the same in every kitchen.',
    why: 'These measures differ by up to a fifth between countries.',
    write: '{put}…   one of {choices}',
  },
  'unit-unknown': {
    says: 'The {what} is {text}, and there is no unit “{unit}”.',
    why: 'Counts are bare numbers: what is counted is said by the material. A can or a bag is told by what it holds, such as 400 mL; where a part of it is enough, its row in a guide says so with does: 30 models.',
    write: '{put}{number}   if it is a count; else a unit such as g, mL or mm',
  },
  'unit-unknown.near': {
    says: 'The {what} is {text}, and there is no unit “{unit}”; “{nearest}” comes near it.',
    write: '{put}{number} {nearest}',
  },
  'unit-wrong.time': { says: 'The {what} is {text}, and not a time.', write: '{put}…   in s, min, h or d' },
  'unit-wrong.length': {
    says: 'The {what} is {text}, and not a length.',
    write: '{put}…   in mm, cm, m or in',
  },
  'usual-outside-range': {
    says: 'The {what} is {usual}, outside the range of {least} to {most}.',
    write: 'usual: …   from {least} to {most}',
  },
  'usual-outside-range.unit': {
    says: 'The {what} is {usual}, and cannot be compared with the range of {least} to {most}.',
    write: 'usual: …   in the same unit',
  },
};
