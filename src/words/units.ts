/** How numbers are written: a point, and a comma between thousands where there are five digits or more. */
export const numberMarks = { point: '.', thousands: ',', thousandsFrom: 5 } as const;

/** Shares of a whole. */
export const numberWords = { percent: '{n}\u00a0%', underOnePercent: 'under 1\u00a0%' } as const;

/** Between the things of a list: a semicolon where one of them has a comma of its own. */
export const listMarks = { comma: ', ', semicolon: '; ', and: ' and ' } as const;

/** Units of time, as durations print them. */
export const timeUnits = { day: 'd', hour: 'h', minute: 'min', second: 's' } as const;

/** Nouns that are counted. */
export const nouns = {
  builder: { one: 'builder', many: 'builders' },
  day: { one: 'day', many: 'days' },
  group: { one: 'group', many: 'groups' },
  item: { one: 'item', many: 'items' },
  judge: { one: 'judge', many: 'judges' },
  length: { one: 'length', many: 'lengths' },
  model: { one: 'model', many: 'models' },
  month: { one: 'month', many: 'months' },
  person: { one: 'person', many: 'people' },
  piece: { one: 'piece', many: 'pieces' },
  roll: { one: 'roll', many: 'rolls' },
  round: { one: 'round', many: 'rounds' },
  run: { one: 'run', many: 'runs' },
  scale: { one: 'scale', many: 'scales' },
  seat: { one: 'seat', many: 'seats' },
  sheet: { one: 'sheet', many: 'sheets' },
  spare: { one: 'spare', many: 'spares' },
  station: { one: 'station', many: 'stations' },
  time: { one: 'time', many: 'times' },
  use: { one: 'use', many: 'uses' },
  'working-day': { one: 'working day', many: 'working days' },
} as const;

/** US customary measures, alone or behind the metric ones. */
export const systemWords = {
  both: '{metric} ({us})',
  /** Between the measures of one amount: "2 US cups + 3 tbsp"; the system is said once. */
  andMeasure: ' + ',
  us: 'US ',
  many: { 'US cup': 'US cups', 'US quart': 'US quarts' },
  temperatures: '{least}–{most}\u00a0{unit}',
} as const;
