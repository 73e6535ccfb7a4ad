import type { ProblemFamily } from './sentences.ts';

/** Objectives of modules: what serves them, and what serves none. */
export const objectiveFindings: ProblemFamily = {
  'confidence-as-assessment': {
    says: 'The objective “{objective}” is assessed by the survey question “{survey}”, which asks trainees about themselves.',
    why: 'How sure somebody feels is not what they can do: ask it, but judge by something that somebody else can see.',
    write: 'assessed-by: […]   one or more of: {known}',
  },
  'modules-in-a-circle': {
    says: 'The modules {modules} come after each other in a circle, so nobody could begin.',
    write: 'after: …   at the module that comes first: [] where nothing comes before it',
  },
  'modules-in-a-circle.itself': {
    says: 'The module “{module}” comes after itself, so nobody could begin.',
    write: 'after: …   without the module itself: [] where nothing comes before it',
  },
  'objective-without-assessment': {
    says: 'Nobody could tell whether the objective “{objective}” was reached: nothing assesses it.',
    write: 'assessed-by: […]   one or more of: {known}',
  },
  'objective-without-assessment.none': {
    says: 'Nobody could tell whether the objective “{objective}” was reached: the module assesses nothing.',
    write:
      'scoring:\n  items:\n    - id: …\n      says: …   what somebody who watches can see\n      objectives: [{objective}]',
  },
  'objective-without-practice': {
    says: 'The objective “{objective}” is not practised anywhere.',
    write: 'practised-at: […]   one or more of: {known}',
  },
  'objective-without-practice.none': {
    says: 'The objective “{objective}” is not practised anywhere: the module has no station and no activity.',
    write:
      'activities:\n  - id: …\n    what: …   what trainees do; and its id in practised-at of the objective',
  },
  'serves-no-objective.activity': {
    says: 'The activity “{name}” serves no objective.',
    write: 'practised-at: […, {name}]   at the objective that it serves',
  },
  'serves-no-objective.item': {
    says: 'The item “{name}” is judged, and no objective asks for it.',
    write: 'objectives: […]   one or more of: {known}',
  },
  'serves-no-objective.question': {
    says: 'The question “{text}” serves no objective.',
    write: 'objectives: […]   one or more of: {known}',
  },
  'serves-no-objective.rating': {
    says: 'The rating “{name}” is judged, and no objective asks for it.',
    write: 'objectives: […]   one or more of: {known}',
  },
  'serves-no-objective.station': {
    says: 'The station “{name}” serves no objective.',
    write: 'practised-at: […, {name}]   at the objective that it serves',
  },
  'skill-only-asked-about': {
    says: 'The objective “{objective}” is to be shown, and only questions that trainees answer alone judge it.',
    why: 'Who knows how it is done has not shown it yet (Miller 1990).',
    write: 'assessed-by: […]   one or more of: {known}',
  },
  'skill-only-asked-about.none': {
    says: 'The objective “{objective}” is to be shown, and only questions that trainees answer alone judge it.',
    why: 'Who knows how it is done has not shown it yet (Miller 1990).',
    write:
      'scoring:\n  items:\n    - id: …\n      says: …   what somebody who watches can see\n      objectives: [{objective}]',
  },
  'verb-not-observable': {
    says: 'The objective “{objective}” begins with “{verb}”, which nobody can watch.',
    why: 'An objective says what a trainee does, so that two people who watch agree whether it was done (Mager 1962).',
    write: 'does: …   what somebody could watch: show, name, tie, place',
  },
};
