/**
 * What a plan says, everywhere it is shown. {names} are filled by `showing`; the compiler knows them from here, so a
 * sentence with a blank that nobody fills does not compile.
 */
export const planWords = {
  title: '{line}: {models}',
  /** Of a part made alone. */
  titlePart: '{line}: for {models}',
  withLevel: '{guide}, {level}',
  withPart: '{model}, {part} alone',
  /** Between the lines of a demand for several models. */
  andAlso: '; ',
  listComma: ', ',
  none: '–',

  /** Under a title: what is wanted and why more is made. */
  counts: {
    plain: '{made} to make, no spares',
    withSpares: '{made} to make, {wanted} wanted and {spares}',
    more: '{made} to make, {wanted} wanted',
    finished: '{count}, {finished} finished already',
    nothing: 'Nothing to make: {finished} are finished, and no more are wanted',
    forOthers: '{count}, {others} of them for other models of this plan',
    someFail: '{count}, since not every one turns out well',
  },

  facts: {
    'hands-on': 'Hands-on',
    'build-time': 'Build time',
    begin: 'Begin by',
    ready: 'Ready',
    'lead-time': 'Lead time',
    outlay: 'To buy',
    'used-each': 'Used, each',
    'per-use': 'Cost of one use',
    keeps: 'Keeps',
    lasts: 'Lasts',
  },
  keepsAt: '{time} ({place})',
  keepsHow: '{time} ({place}, {how})',
  lastsPart: '{part} {uses}',
  atLeast: 'at least {amount}',

  /** What stands beside a material. */
  materials: {
    pieces: '{count} of {size}',
    namedPieces: '{count} {piece} of {size}',
    does: '{amount} does {models}',
    shareOf: '1/{n} of {amount}',
    usually: 'usually {amount} is enough',
    until: 'until {sign}',
    waste: '{share} waste counted in',
    leftBehind: '{share} stays in the pot, counted in',
    perEvery: 'for every {models}',
    perBatch: 'for the whole batch',
    perTool: 'for each {tool}',
    perPart: 'for each {part}',
  },

  /** What stands beside a step. */
  steps: {
    number: '{n}',
    eachModel: 'once for each model, {count} times',
    oneOf: 'in {runs} of {models}',
    upTo: 'in {runs} of up to {models}',
    inAll: '{amount} in all',
    handsOnAlone: 'hands-on',
    handsOnPeople: 'hands-on, {people} together',
    handsOnEach: 'hands-on for each model',
    handsOnEachPeople: 'hands-on for each model, {people} together',
    handsOnRun: 'hands-on for a run of {models}',
    handsOnRunPeople: 'hands-on for a run of {models}, {people} together',
    machine: 'a machine works, nobody needed',
    wait: 'wait',
    watched: 'wait; somebody stays in the room',
    notBefore: 'next step not before {time}',
    notBeforeRuns: 'next step not before {first} (first run) and {last} (last run)',
    limit: 'Hands off the next step within {time}.',
    limitBefore: 'Hands off “{step}” within {time}.',
    clears: 'Vapour: no flame or hot tool until {time} after it.',
    ignition: 'Flame or heat: no vapour near.',
    directions: 'Follow the directions of {material}.',
    directionsSay: 'Follow the directions of {material}: {says}',
  },

  /** Between dangers of one product. */
  dangersBetween: '; ',
  hazards: {
    statement: '{source}: {statement} ({code})',
    unknown: '{source}: {code}, see the supplier’s data sheet',
    danger: '{source}: {statement}',
  },

  cautions: {
    word: { danger: 'DANGER', warning: 'WARNING', caution: 'CAUTION', notice: 'NOTICE' },
    step: 'Step {steps}',
    steps: 'Steps {steps}',
  },

  shopping: {
    packs: '{count} × {holds}',
    packsOfSize: '{count} of {holds}',
    packsOfMany: '{count} × {inPack} of {holds}',
    packsAnd: ' + ',
    free: 'free',
    noPack: 'no pack known',
    noPrice: 'no price',
    fromStock: '{amount} from stock',
    noSupplier: 'no supplier named',
    leftOfDoes: 'enough for {models}',
    order: 'order {time} before you start',
    orderedThere: 'ordered {ordered}, there {arrives}',
    noCharge: 'free',
  },

  costs: {
    used: { name: 'Used', means: 'what ends in one model, with waste' },
    outlay: { name: 'Outlay', means: 'whole packs to buy, for each good model' },
    'with-tools': { name: 'With tools', means: 'used, and its share of the tools’ price' },
    'with-labour': { name: 'With labour', means: 'with tools, and hands-on hours at your wage' },
    'per-use': { name: 'Per use', means: 'what one use takes of a model, and of what is renewed for it' },
    'cash-to-start': { name: 'Cash to start', means: 'outlay for all, and the tools you do not own' },
  },

  tools: {
    need: '{count} at once',
    owned: '{count} owned',
    toBuy: '{count} to buy',
    unknown: 'not said how many you own',
  },

  schedule: {
    who: 'builder {n}',
    whoTogether: 'builders {list}',
    nobody: 'machine',
    what: '{step}',
    whatModels: '{step}, {models}',
    allModels: 'all {models}',
    allBut: 'all {models} but {others}',
    someOf: '{models} of {made} models',
    ofGuide: '{guide}: {what}',
    range: '{from}–{to}',
    then: 'then waits {time}, until {until}',
    thenLast: 'then waits {time}, the last until {until}',
    thenWatched: 'then waits {time}, watched, until {until}',
    thenWatchedLast: 'then waits {time}, watched, the last until {until}',
    referenceWeek: 'Work for {builders}, in a week where nothing is closed and all materials are at hand.',
    dated: 'Work for {builders}. Times are those of {zone}.',
    ready: 'All are ready {time}.',
    readyUseBy: 'All are ready {time}; the first is good until {until}.',
    shortest: 'No schedule is shorter.',
    shorter: 'This is at most {gap} from the shortest possible.',
  },

  /** Why there is no schedule: what was found, then what stands in the way. */
  noSchedule: {
    'schedule-impossible': 'No schedule can keep every limit.',
    'schedule-not-found': 'No schedule was found that keeps every limit; one may exist.',
    'too-many-runs': 'No schedule is made for {runs} runs: {most} are the most.',
  },
  /** By what stands in the way; of several sentences the first of which all blanks are known. */
  obstacles: {
    builders: [
      '“{step}” takes more builders than the {has} there are.',
      'The {has} builders cannot do all of it in time.',
    ],
    place: [
      '“{step}” needs more of “{place}” than there is: {has}.',
      'There is too little room at “{place}”: {has}.',
    ],
    tool: ['“{step}” needs more of “{tool}” than there are: {has}.', 'There are too few of “{tool}”: {has}.'],
    capacity: ['“{step}” needs more than there is.'],
    calendar: ['“{step}” does not fit in one stretch into the working hours there are for it.'],
    calendarUntilReady: ['“{step}” does not fit in one stretch into the working hours left until then.'],
    lags: [
      '“{other}” cannot be done in time after “{step}”: the time within which it must be done is too short.',
      '“{step}” cannot be done within its limits.',
    ],
    deadline: ['“{step}” cannot be done in time.', 'There is not enough time.'],
    delivery: ['{material} is needed by {needed}; ordered today, it is there {arrives} at the soonest.'],
    exclusion: ['“{step}” makes vapour and “{other}” is an ignition: they cannot be kept apart in time.'],
  },

  readings: {
    mass: '{material}: weigh {amount} on a finer scale, one that reads {finer}; the plan reckons with {reading}.',
    volume:
      '{material}: measure {amount} more finely, with what reads {finer}; the plan reckons with {reading}.',
    length:
      '{material}: measure {amount} more finely, with what reads {finer}; the plan reckons with {reading}.',
  },
} as const;
