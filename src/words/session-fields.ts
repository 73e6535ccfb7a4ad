/** The fields of a session's page: how many come, who leads, when it begins. */
export const sessionFieldWords = {
  heading: 'For your people',
  says: 'Change a number: groups, timetable and models follow.',
  peopleHelp: 'A whole number from 0 to 1,000.',
  instructors: 'Instructors',
  instructorsHelp: 'A whole number from 0 to 100.',
  starts: 'Begins at',
  startsHelp: 'A time such as 13:00; empty for minutes from the beginning.',
  /** What the page answers after each change. */
  answer: '{people}; {instructors}; {models} to make.',
  wrong: '{field}: {help}',
} as const;
