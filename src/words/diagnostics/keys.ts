import type { ProblemFamily } from './sentences.ts';

/** Keys that are unknown, missing, empty or of the wrong kind; maps by level. */
export const keyProblems: ProblemFamily = {
  'unknown-key': {
    says: 'There is no key “{key}” here.',
    why: 'Known here: {known}.',
    act: 'one of the known keys, or nothing',
  },
  'unknown-key.near': {
    says: 'There is no key “{key}” here; “{near}” comes near it.',
    why: 'Known here: {known}.',
    write: '{near}:',
  },
  'unknown-key.setting': {
    says: 'There is no key “{key}” here.',
    why: 'Known here: {known}.',
    write:
      'set:\n  {key}: {value}   where it is a setting of the step; else one of the known keys, or nothing',
  },
  'missing-key': {
    says: 'The key “{key}” is missing{inWhat}.',
    write: '{key}: …',
  },
  'missing-key.id': {
    says: 'The key “id” is missing{inWhat}.',
    write: 'id: {id}',
  },
  'missing-key.signal': {
    says: 'The key “signal” is missing{inWhat}.',
    write: 'signal: …   danger, warning, caution or, where only things may be damaged, notice',
  },
  'missing-key.name': {
    says: 'A name, as people say it, is missing{inWhat}.',
    write: 'name: …',
  },
  'missing-key.title': {
    says: 'The guide has no title.',
    write: 'title: …   what the model is called',
  },
  'missing-key.currency': {
    says: 'The program does not say in which currency it counts.',
    write: 'currency: …   the code of your money by ISO 4217, such as GBP',
  },
  'missing-key.time-zone': {
    says: 'The program does not say which clock it lives by.',
    why: 'Starts, closing times and the change to summer time follow it.',
    write: 'time-zone: …   a name such as Europe/London',
  },
  'missing-key.materials': {
    says: 'The guide has no materials.',
    write: 'materials:\n  - use: …\n    amount: …',
  },
  'missing-key.steps': {
    says: 'The guide has no steps.',
    why: 'The id of a step is its heading in the text below, in lower case with hyphens.',
    write: 'steps:\n  - id: …\n    hands-on: …',
  },
  'missing-key.amount': {
    says: 'It is not said how much there is of {what}.',
    write: 'amount: …   for one model, unless for: says another; of cut pieces, pieces: with their sizes',
  },
  'missing-key.size': {
    says: 'The {what} has no size.',
    write: 'size: …   two sides, such as 150 mm x 100 mm; of a rod, length:',
  },
  'missing-key.ask': {
    says: 'The {what} says neither what to measure nor what to ask.',
    write: 'ask: …   a question with yes or no; or measure: and target:',
  },
  'missing-key.step-id': {
    says: 'The {what} does not say which heading of the text is its own.',
    write: 'id: …   the heading in lower case with hyphens',
  },
  'missing-key.usual': {
    says: 'The {what} says how long it is in some rooms, and not how long it usually is.',
    write: 'usual: …',
  },
  'empty-value': {
    says: '“{key}” has no value.',
    write: '{key}: …   or leave the line out',
  },
  'wrong-kind.text': {
    says: 'The {what} is one text or amount, and here stands a list or a set of keys.',
    write: '{key}: …   on one line; in quotes where it holds a colon',
  },
  'wrong-kind.list': {
    says: 'The {what} is a list, and here stands “{text}”.',
    write: '{put}[{text}]   in brackets, with commas between',
  },
  'wrong-kind.none': {
    says: 'The {what} is a list, and here stands “{text}”.',
    write: '{put}[]   brackets with nothing in them: there are none',
  },
  'wrong-kind.days': {
    says: 'The {what} is a list, and here stands “{text}”.',
    write: '{put}[{days}]',
  },
  'wrong-kind.hazards': {
    says: 'The {what} is a list of codes, and here stands “{text}”.',
    why: 'Section 2 of the supplier’s safety data sheet has the codes; dangers that GHS has no code for have a list of their own.',
    write: 'also: [{also}]   where that is all; a code stands in hazards: [H…]',
  },
  'wrong-kind.dates': {
    says: 'The {what} is a list of days, and here stands “{text}”.',
    write: 'closed: […]   year, month and day with zeros, such as 2026-12-24; commas between',
  },
  'wrong-kind.sentence': {
    says: 'The {what} is a list, and here stands “{text}”.',
    write: '{key}:\n  - {sentence}   whatever else belongs there, each on a line of its own after a hyphen',
  },
  'wrong-kind.sentences': {
    says: 'The {what} is a list, and here stands “{text}”.',
    why: 'Between brackets a comma would part it, so it has a line of its own.',
    write: '{key}:\n  - {sentence}   whatever else belongs there, each on a line of its own after a hyphen',
  },
  'wrong-kind.rows': {
    says: 'The {what} is a list of entries that have keys of their own, and here stands “{text}”.',
    why: 'Known to an entry: {known}.',
    write: '{key}:\n  - {block}   each other key on a line of its own below',
  },
  'wrong-kind.row': {
    says: 'The {what} has keys of its own, and here stands “{text}” alone.',
    why: 'Known to an entry: {known}.',
    write: '- {block}   each key on a line of its own',
  },
  'wrong-kind.people': {
    says: 'The people of a cohort are a list of who comes and how many of each, and here stands “{text}”.',
    why: 'Those who rate or try something out are planned otherwise than those who train.',
    write: 'people:\n  - id: trainees\n    count: {count}   and an entry for each other kind of people',
  },
  'wrong-kind.keys': {
    says: 'The {what} has keys of its own, and here stands something else.',
    why: 'Known here: {known}.',
    write: '{key}:\n  {block}   each key on a line of its own, two blanks further right',
  },
  'wrong-kind.own-keys': {
    says: 'The {what} has keys of its own, and here stands something else.',
    write: '{key}:\n  {block}   each key on a line of its own, two blanks further right',
  },
  'wrong-kind.pass': {
    says: 'The pass mark says how it was set, and here stands something else.',
    why: 'A number alone does not tell who judged what enough is; the mark is computed from what they said.',
    write: 'pass:\n  none-set: yes   or method, judges, on and by, where judges set one',
  },
  'level-missing': {
    says: 'The {what} is by level, and says nothing of {missing}.',
    why: 'A value that is by level in one place says it for every level of the guide.',
    write: '{firstMissing}: …',
  },
  'level-unknown': {
    says: 'The {what} has a key “{level}”, which is no level of this guide.',
    why: 'Its levels: {levels}.',
    act: 'one of the levels',
  },
  'level-unknown.near': {
    says: 'The {what} has a key “{level}”, which is no level of this guide; “{near}” comes near it.',
    why: 'Its levels: {levels}.',
    write: '{near}:',
  },
  'amount-twice': {
    says: 'The {what} says how much in two ways: {first} and {second}.',
    write: 'one of the two   pieces where it is cut to size, amount where it is measured',
  },
  'not-built-yet.follows': {
    says: 'A workspace cannot follow another yet, so “follows” is not read.',
    act: 'copies of the materials, tools and guides, and nothing under follows',
  },
  'not-built-yet.local': {
    says: 'The file {file} would change a guide that another workspace gives, which cannot be read yet.',
    why: 'Nothing of it is in the guide, no caution either.',
    act: 'the changes into the guide itself, and this file gone',
  },
  'not-built-yet.zones': {
    says: 'Zones within a model cannot be read yet.',
    write: 'zones: []',
  },
};
