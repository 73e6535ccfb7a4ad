/** What is said of a module's session: who is where when, what stands ready, and what does not fit. */
export const sessionWords = {
  /** Headings in the terminal. */
  headings: {
    agenda: 'What happens when',
    stations: 'Stations',
    models: 'Models that stand ready',
    lives: 'Before, between and after uses',
    tools: 'Tools of the stations',
    notes: 'Worth knowing of the session',
  },
  noModels: 'The session needs no models: there is nothing to build.',
  facts: { booked: 'Booked', begins: 'Begins', where: 'Where', instructors: 'Instructors' },

  people: {
    some: '{count} {kind}',
    one: '{kind}: 1',
    /** In the terminal: "2 seniors (rate)". */
    does: '{people} ({does})',
    heading: 'People',
    inGroups: '{people} in {groups}: {sizes}',
    oneGroup: '{people} in one group',
    /** What each kind is there for. */
    as: {
      trainees: 'practise',
      raters: 'rate',
      'try-out': 'try the models out',
      pilot: 'try the session out',
    },
  },
  group: 'Group {n}',

  /** From the beginning of the session, or by the clock where its start is known: "0:15–0:30", "13:15–13:30". */
  clock: '{hours}:{minutes}',
  range: '{from}–{to}',

  circuit: {
    says: '{rounds} of {round}, {change} to change: {all} in all.',
    saysOne: '{rounds} of {round}.',
    round: 'Round {n}',
    rest: 'Rest',
    rests: 'rests',
    at: '{station}: {group}',
    rounds: 'Round',
    time: 'Time',
    group: 'Group',
  },

  station: {
    seats: '{seats}, one person at each',
    seatsOfMany: '{seats}, {people} at each',
    takes: '{time}, {change} to change',
    takesAlone: '{time}',
    reset: '{time} to set it up again',
    led: 'An instructor leads it.',
    alone: 'Nobody leads it.',
    meanwhile: 'Meanwhile: {text}',
    uses: '{model}: {uses} each; {share}',
    tool: '{count} × {tool}',
  },
  /** How people share models. */
  shares: {
    mixed: 'anybody on any model',
    whole: 'each person on one model, and others after',
    seat: 'a model stays at its seat until it is worn',
    own: 'a model for each person',
  },

  models: {
    besides: {
      demonstration: '{n} for the demonstration',
      pilot: '{n} for the pilot',
      assessment: '{n} to be judged on',
    },
    practice: '{n} to practise on',
    share: '{uses} in all; {ways}',
    spares: '{spares}',
    /** All of a part, those of whole models among them. */
    part: '{part}: {count} in all, {on} of them on the models',
  },

  /** What models take before and after. */
  care: {
    setUp: 'Set up from {time} on, each station by somebody of its own: the longest takes {longest}.',
    setUpDayBefore:
      'Set up from {time} on the day before, each station by somebody of its own: the longest takes {longest}.',
    setUpDaysBefore:
      'Set up from {time} on, {days} before, each station by somebody of its own: the longest takes {longest}.',
    setUpBefore: 'Set up {longest} before it begins, each station by somebody of its own.',
    after: 'Afterwards the models of one station take up to {longest}.',
    perUse: 'One use costs {cost}.',
    takes: '{name}, {time}: {says}',
    takesUnsaid: '{name}: {says}',
  },

  instructors: {
    needed: '{needed} needed',
    there: '{there} there, {needed} needed',
    ratio: '1 for at most {ratio} trainees',
    led: '{stations} led',
  },

  tools: {
    atOnce: '{count} at once',
    inAll: '{count} at once; {all} where everybody takes a new one',
  },

  passMark: {
    none: 'No pass mark is set.',
    unsaid: 'It is not said whether there is a pass mark.',
    unknown: 'The pass mark is set by {method}, and what the judges said is not there.',
    set: '{mark} ({how})',
    methods: {
      angoff: 'Angoff',
      'borderline-regression': 'borderline regression',
      'contrasting-groups': 'contrasting groups',
    },
  },

  /** For other programs. */
  objective: '{does}, {standard}',
  /** In a calendar, which has more in it than this session. */
  events: { title: '{module}: {what}', round: '{what}, round {n}', group: '{group}, {where}' },

  /** What does not fit, or is not known. */
  notes: {
    noSession: 'No time is booked: when things happen is not known.',
    noTime: '“{item}” has no time.',
    over: 'It does not fit: the agenda takes {takes}, and {booked} are booked. That is {over} too much.',
    under: 'The agenda takes {takes} of the {booked} booked; {left} are left over.',
    closed: 'The session is on {day}, a day on which the program is closed.',
    nobody: 'Nobody comes to practise.',
    fewSeats: 'At “{station}” {places} of a group of {group} have a place at once; the others take turns.',
    fewInstructors: 'Too few instructors: {needed} needed, {there} there.',
    resetTooLong: '“{station}” takes {reset} to set up again, and there are {change} to change.',
    clearUpShort: 'The models of one station take {after} to clear up, and the agenda has {clearUp} for it.',
    lastsUnsaid:
      '“{guide}” does not say how many uses it lasts: it is counted as if it never wore out. Say so with “lasts” in its guide.',
    noGuide: 'The guide “{guide}” is not there: its models are not counted.',
  },
} as const;
