import type { ProblemFamily } from './sentences.ts';

/** Sessions of modules: their agenda, their stations, their people, what is said in them. */
export const sessionFindings: ProblemFamily = {
  'heading-nearly-for-staff': {
    says: 'The text under “{heading}” is published for trainees too.',
    why: 'Only what stands under the heading “For instructors” is kept for staff; every other text of a module is for everybody.',
    write: '## For instructors   where it is for staff alone; else a heading that does not speak of them',
  },
  'agenda-does-not-add-up.circuit': {
    says: 'The agenda item “{item}” says {stated}, but its stations take {computed}: {rounds}.',
    why: 'A circuit is as long as its rounds. There are as many rounds as stations or groups, whichever are more.',
    write: 'takes: {computed}   or without this line: its stations say it',
  },
  'agenda-does-not-add-up.over': {
    says: 'The agenda takes {sum}, more than the {booked} that are booked.',
    why: '{items}.',
    write: 'booked: {sum}   or shorter items, fewer rounds',
  },
  'agenda-does-not-add-up.rests': {
    says: 'Several items of the agenda take the rest of the time: {items}.',
    why: 'Only one item can take all that is left.',
    write: 'takes: …   at all of them but one',
  },
  'agenda-does-not-add-up.under': {
    says: 'The agenda takes {sum}, less than the {booked} that are booked.',
    why: '{items}.',
    write: '- id: slack\n  takes: the rest   or longer items, or less time booked',
  },
  'agenda-item-without-time': {
    says: 'The agenda item “{item}” says neither how long it takes nor which stations it goes round.',
    write: 'takes: …   or stations: […]',
  },
  'agenda-out-of-order.early': {
    says: 'The “{item}” comes before “{circuit}”, when people have not done practising.',
    act: 'the item “{item}” below “{circuit}” in the agenda',
  },
  'agenda-out-of-order.late': {
    says: 'The “{item}” comes after “{circuit}”, when people have practised already.',
    act: 'the item “{item}” above “{circuit}” in the agenda',
  },
  'goes-off-in-session': {
    says: 'A model of “{guide}” is good for {keeps}, and the session takes {booked}, so it goes off before the end.',
    why: 'All models are ready when the session begins.',
    write:
      'booked: …   a shorter session, or another guide; how long a model keeps is for those who tried it',
  },
  'missing-agenda-item.brief': {
    says: 'The session of “{module}” has no brief.',
    why: 'Looked for by its id. Before anybody practises, they hear what is planned, how they are judged and what is dangerous.',
    write:
      '- id: brief\n  takes: …\n  script: [training-only…]   and what else is said, as the first item or after a survey',
  },
  'missing-agenda-item.clear-up': {
    says: 'The session of “{module}” has no clear-up.',
    why: 'Looked for by its id. Nothing sharp and no model leaves the room with anybody.',
    write: '- id: clear-up\n  takes: …\n  script: [pockets…]   and what else is done',
  },
  'missing-agenda-item.debrief': {
    says: 'The session of “{module}” has no debrief.',
    why: 'Looked for by its id. What was learned is said before people leave.',
    write: '- id: debrief\n  takes: …',
  },
  'missing-from-script.allergens': {
    says: 'The “{item}” does not name what somebody may react to in this room: {because}.',
    why: 'The sentence is of the published list and fills itself in: “{words}” Your own words are not searched for it.',
    write: '- allergens   in the script of “{item}”',
  },
  'missing-from-script.pockets': {
    says: 'In the “{item}” nobody turns out their pockets.',
    why: 'The sentence is of the published list: “{words}” Your own words are not searched for it.',
    write: '- pockets   in the script of “{item}”',
  },
  'missing-from-script.sharps-count': {
    says: 'In the “{item}” nobody counts what is sharp: {because}.',
    why: 'The sentence is of the published list: “{words}” Your own words are not searched for it.',
    write: '- sharps-count   in the script of “{item}”',
  },
  'missing-from-script.training-only': {
    says: 'The “{item}” does not say that the models are for training only.',
    why: 'The sentence is of the published list: “{words}” Your own words are not searched for it.',
    write: '- training-only   in the script of “{item}”',
  },
  'more-tools-than-owned': {
    says: 'The stations of “{module}” need {needed} of {tool} at once, and the program has {has}.',
    write: '{id}: {needed}   below owned in program.yaml, if there are as many',
  },
  'other-version-of-guide': {
    says: 'The station “{station}” was written for version {version} of “{guide}”, which is at version {is} now.',
    write: 'version: {is}   once somebody has looked at what changed in the guide',
  },
  'other-version-of-guide.none': {
    says: 'The station “{station}” was written for version {version} of “{guide}”, which says no version.',
    write: 'version: {version}   in the guide, if it is that one',
  },
  'practice-too-short': {
    says: 'At the station “{station}” each trainee has {gets} with hands on, less than the {least} that it promises.',
    why: 'People at one seat take turns, at most {sharers} of them.',
    write: 'takes: {needed}   or more seats, smaller groups',
  },
  'reset-longer-than-change-over': {
    says: 'The station “{station}” takes {reset} to set up again, and there are only {changeOver} between two groups.',
    write: 'change-over: {reset}   or a second set that stands ready',
  },
  'reset-longer-than-change-over.guide': {
    says: 'A model of “{guide}” takes {reset} between two uses, and at the station “{station}” there are only {changeOver} between two groups.',
    write: 'change-over: {reset}   or a second set that stands ready, and the reset that is left',
  },
  'station-in-no-agenda': {
    says: 'No item of the agenda goes round the station “{station}”, so no trainee gets there.',
    write: 'stations: […, {station}]   at the item that goes round it',
  },
  'station-twice-in-a-circuit': {
    says: 'The agenda item “{item}” goes round the station “{station}” twice, so two groups would be at it at once.',
    write: 'stations: [{rest}]   or a second station of another id',
  },
  'survey-in-no-agenda': {
    says: 'Questions of the survey are asked {when} the session, and no item of the agenda has time for them.',
    why: 'Where people answer at another time this may stay as it is.',
    write: 'survey: {when}   at the item of the agenda in which they are answered',
  },
  'too-few-instructors.led': {
    says: '“{module}” needs {needed} instructors at its stations that are led, and has {there}.',
    why: 'All stations are busy at once, and {led} are led.',
    write: 'instructors: {needed}   or fewer stations that are led',
  },
  'too-few-instructors.ratio': {
    says: '“{module}” needs {needed} instructors for {trainees} trainees, at most {ratio} to one, and has {there}.',
    write: 'instructors: {needed}   or fewer trainees',
  },
  'too-few-seats': {
    says: 'The station “{station}” has room for {room}, and the largest group has {group}, so somebody never practises there.',
    write: 'seats: {needed}   or as needed, or smaller groups',
  },
  'unknown-script-sentence': {
    says: '{who} says “{name}”, which is written like an id of the published list and is not in it.',
    why: 'What is written like an id of the list is looked up there; your own words stand as they are.',
    write: '{words}, …   in a sentence of your own; or one of: {known}',
  },
  'unknown-script-sentence.near': {
    says: '{who} says “{name}”, which is not in the published list; “{near}” comes near it.',
    write: '{paste}',
  },
};
