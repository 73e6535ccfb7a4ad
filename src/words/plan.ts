/**
 * What a plan says, everywhere it is shown. {names} are filled by `showing`; the compiler knows them from here, so a
 * sentence with a blank that nobody fills does not compile.
 */
export const planWords = {
  title: '{line}: {models}',
  withLevel: '{guide}, {level}',
  /** Between the lines of a demand for several models. */
  andAlso: '; ',
  listComma: ', ',
  listAnd: ' and ',
  none: '–',

  /** Under a title: what is wanted and why more is made. */
  counts: {
    plain: '{made} to make',
    withSpares: '{wanted} wanted and {spares}: {made} to make',
    more: '{wanted} wanted, {made} made: {more} more, since some fail or a run is always full',
    moreWithSpares:
      '{wanted} wanted and {spares}, {made} made: {more} more, since some fail or a run is always full',
  },

  facts: {
    'hands-on': 'Hands-on',
    'build-time': 'Build time',
    ready: 'Ready',
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
    oneOf: 'in {runs} of {models}',
    upTo: 'in {runs} of up to {models}',
    inAll: '{amount} in all',
    handsOnAlone: 'hands-on',
    handsOnPeople: 'hands-on, {people} together',
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
    packsOfSheets: '{count} × {inPack} of {holds}',
    packsAnd: ' + ',
    free: 'free',
    noPack: 'no pack known',
    noPrice: 'no price',
    fromStock: '{amount} from stock',
    noSupplier: 'no supplier named',
    order: 'order {time} before you start',
    orderedThere: 'ordered {ordered}, there {arrives}',
    noCharge: 'free',
    missingPrices: 'No price known for {materials}: every total is “at least”.',
    byArea:
      '{materials}: bought by area or length. Whether the pieces fit on it is not checked: lay them out before you order.',
  },

  costs: {
    used: { name: 'Used', means: 'what ends in one model, with waste' },
    outlay: { name: 'Outlay', means: 'whole packs to buy, for each good model' },
    'with-tools': { name: 'With tools', means: 'used, and its share of the tools’ price' },
    'with-labour': { name: 'With labour', means: 'with tools, and hands-on hours at your wage' },
    'per-use': { name: 'Per use', means: 'used, by how often a model can be used' },
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
    whatAll: '{step}, all {models}',
    ofGuide: '{guide}: {what}',
    range: '{from}–{to}',
    then: 'then waits {time}, until {until}',
    thenLast: 'then waits {time}, the last until {until}',
    thenWatched: 'then waits {time}, watched, until {until}',
    thenWatchedLast: 'then waits {time}, watched, the last until {until}',
    goesOn: 'goes on {until}',
    referenceWeek: 'Work for {builders}, in a week where nothing is closed and all materials are at hand.',
    dated: 'Work for {builders}. Times are those of {zone}.',
    nobodyNeeded: 'nobody',
    readyBy: 'Ready {time}.',
    useBy: 'Use by {time}.',
    lastReady: '{guide}: ready {time}.',
    lastReadyUseBy: '{guide}: ready {time}, the first good until {until}.',
  },

  /** Why there is no schedule, by the code of `NoSchedule`, with its variant where the cases differ. */
  noSchedule: {
    'schedule-impossible': 'No schedule can keep every limit of this guide in these working hours.',
    'schedule-not-found': 'No schedule was found that keeps every limit. One may exist.',
    'too-many-runs': 'Too many runs for a schedule: above 20,000 none is made.',
  },

  readings: {
    mass: 'A finer scale is needed for {amount} of {material}: one that reads {finer}, where {reading} is what the plan reckons with.',
    volume:
      'A finer measure is needed for {amount} of {material}: one that reads {finer}, where {reading} is what the plan reckons with.',
    length:
      'A finer ruler is needed for {amount} of {material}: one that reads {finer}, where {reading} is what the plan reckons with.',
  },
} as const;
