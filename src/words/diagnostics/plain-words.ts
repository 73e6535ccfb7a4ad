import type { ProblemFamily } from './sentences.ts';

/** Values that are one of a few words, a day, an address, a code. */
export const wordProblems: ProblemFamily = {
  'unknown-word': {
    says: 'The {what} is {choices}, and here stands “{text}”.',
    write: '{put}…   {choices}',
  },
  'unknown-word.near': {
    says: 'The {what} is {choices}, and here stands “{text}”.',
    write: '{put}{near}',
  },
  'date-unreadable': {
    says: 'The {what} is a day, and “{text}” is none that can be read without guessing.',
    why: 'Year, month and day, in this order and with zeros, mean the same everywhere.',
    write: '{put}YYYY-MM-DD   such as 2026-03-09',
  },
  'date-unreadable.no-such-day': {
    says: 'The {what} is {text}, and the calendar has no such day.',
    write: '{put}YYYY-MM-DD   a day of that month',
  },
  'link-unreadable': {
    says: 'The {what} is an address on the web, and “{text}” is none.',
    write: '{put}https://…',
  },
  'hazard-code-unreadable': {
    says: '“{text}” is no code of a hazard statement.',
    why: 'GHS codes have an H and three digits; section 2 of the supplier’s safety data sheet lists those of the product.',
    write: 'H…   as the safety data sheet gives it; a danger that has no code stands under also',
  },
  'hazard-code-unreadable.precaution': {
    says: '“{text}” is no code of a precautionary statement.',
    why: 'GHS codes have a P and three digits, the first of them 1 to 5; those that belong together are joined by +. Section 2 of the supplier’s safety data sheet lists those of the product.',
    write: 'P…   as the safety data sheet gives it',
  },
  'licence-unknown': {
    says: '“{text}” is no licence of the SPDX list.',
    write: 'licence: …   its short name there, such as CC-BY-4.0',
  },
  'licence-unknown.near': {
    says: '“{text}” is no licence of the SPDX list; “{near}” comes near it.',
    write: 'licence: {near}',
  },
  'locale-unreadable': {
    says: '“{text}” is no language by BCP 47.',
    write: 'locale: …   such as en-GB, de or pt-BR',
  },
  'locale-unreadable.near': {
    says: '“{text}” is no language by BCP 47; “{near}” comes near it.',
    write: 'locale: {near}',
  },
  'zone-unknown': {
    says: '“{text}” is no time zone that is known here.',
    why: 'A zone is named by a large place in it, because such a name knows its summer time.',
    write: 'time-zone: …   such as Europe/London or America/Los_Angeles',
  },
  'zone-unknown.near': {
    says: '“{text}” is no time zone that is known here; “{near}” is one.',
    write: 'time-zone: {near}',
  },
  'hours-unreadable': {
    says: 'The {what} is “{text}”, and not a stretch from one time to another.',
    write: '{put}09:00-17:00   hours and minutes of 24 hours; or always, round the clock',
  },
  'hours-unreadable.no-such-time': {
    says: 'The {what} is “{text}”, and a day has no such time.',
    write: '{put}09:00-17:00   up to 24:00',
  },
  'hours-unreadable.backwards': {
    says: 'The {what} is “{text}”, and ends before it begins.',
    why: 'A shift over midnight is two stretches, one up to 24:00 and one from 00:00.',
    write: '{put}09:00-17:00   the earlier time first',
  },
  'hours-overlap': {
    says: 'The hours {text} begin before {before} is over.',
    act: 'each stretch after the one before it, or the two as one',
  },
  'hours-none': {
    says: 'There are no working hours.',
    write: 'hours: [09:00-17:00]   your own; or leave the line out for these',
  },
  'count-of-none': {
    says: 'The {what} is 0, and at least one is needed to make anything.',
    write: '{key}: 1',
  },
  'people-too-many': {
    says: 'The module counts {all} people, and is planned for {most} at most.',
    why: 'A session of so many is held several times.',
    write: 'count: …   those of one session',
  },
  'places-unreadable': {
    says: 'The {what} is “{text}”, and not a number of places.',
    write: '{put}1   for each model; or 1 a run',
  },
  'directions-time-unreadable': {
    says: '“{text}” does not say whose directions give the time.',
    write: 'as: …   a material, a point and one of its times, such as contact-adhesive.full',
  },
  'basis-unknown': {
    says: 'The {what} is “{text}”, and this guide has no part and no tool of that name.',
    why: 'What a tool holds stands in the guide’s own list of tools.',
    write: 'for: each model   or: every 6 models, the batch, each and the name of a tool or part',
  },
  'basis-unknown.near': {
    says: 'The {what} is “{text}”, and this guide has no part and no tool of that name; “{near}” comes near it.',
    write: 'for: each {near}',
  },
  'basis-unknown.every': {
    says: 'The {what} is “{text}”, and a run takes 1 to 10,000 models.',
    write: 'for: every 6 models   your own number',
  },
};
