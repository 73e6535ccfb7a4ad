/** What only instructors read: score sheets, surveys, the matrix, the session's page. */
export const teachingWords = {
  back: 'Back to the module',
  /** In the margin of each printed page. */
  head: '{module} · {sheet} · {version}',
  headNoVersion: '{module} · {sheet}',
  staffOnly: 'For staff only: not in the trainees’ edition.',

  page: {
    title: '{module}: for instructors',
    lead: 'What you need to run it: who is where when, what is said, what is scored, what is asked.',
    forTrainees: 'What trainees read',
    forInstructors: 'For instructors',
    meanwhile: 'Meanwhile:',
    planThem: 'All of them in one plan, with its shopping list and schedule:',
    command: 'benchwright plan {module}',
    people: 'Who comes',
    plan: 'Session plan',
    planSays: 'Counted from the beginning; by the clock once a day is set.',
    timetable: 'Who is where',
    rooms: 'Stations',
    models: 'Models to make',
    ready: 'Stands ready',
    modelsSay: 'Spares included; one plan buys and makes them all.',
    careful: 'Dangers in the room',
    scoring: 'Scoring',
    raterNotes: 'Before you rate',
    passMark: 'Pass mark:',
    debrief: 'To ask at the end',
    matrix: 'Objectives',
    sheets: 'To print',
    files: 'For other programs',
    buy: 'One plan for all of them',
  },

  plan: {
    date: 'Date',
    room: 'Room',
    lead: 'Led by',
    begins: 'Begins at',
  },

  matrix: {
    objective: 'Objective',
    shown: 'Shown',
    practised: 'Practised at',
    assessed: 'Seen by',
    none: 'none',
  },

  score: {
    title: 'Score sheet',
    /** Named as the columns of the table that the sheet is typed into. */
    person: 'Person (code)',
    group: 'Group',
    rater: 'Rater (code)',
    date: 'Date',
    item: 'Done?',
    yes: 'Yes',
    no: 'No',
    weight: 'Weight',
    critical: 'must not be missed',
    criticalSays: 'One that must not be missed and is missed fails the whole, whatever the total.',
    ratingSays: 'Ring one point; the words under it decide.',
    times: 'Time',
    limit: 'Limit {time}',
    taken: 'Time taken, in seconds',
    formula: 'Score = limit − time taken − penalties, never below 0.',
    adds: '{time} each',
    addsAtMost: '{time} each, {times} at most',
    count: 'How often',
    total: 'Total of the weights, of {total}',
    remarks: 'What was seen',
    never: 'Never write a name on this sheet; use the code.',
  },

  survey: {
    before: 'Survey before',
    after: 'Survey after',
    code: 'Your code',
    codeSays: 'The same code before and after. No names.',
    words: 'In your own words',
    of: 'for {kinds}',
    confidence: 'How sure people feel is no measure of what they can do.',
  },

  /** Beside the instructors' page, for other programs. */
  files: {
    'session.json': 'The session as JSON',
    'timetable.csv': 'The timetable as a table (CSV)',
    'score-sheet.csv': 'An empty score sheet as a table (CSV): a row for each trainee and rater',
    'survey-before.csv': 'The survey before as an empty table (CSV)',
    'survey-after.csv': 'The survey after as an empty table (CSV)',
  },

  sheets: {
    'hand-out': 'Hand-out for trainees',
    'session-plan': 'Session plan',
    timetable: 'Timetable',
    'score-sheets': 'Score sheets',
    surveys: 'Surveys',
    matrix: 'Objectives',
  },
} as const;
