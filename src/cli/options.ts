import type { Program } from '../core/model/program.ts';
import { isDay } from '../core/time/day.ts';
import {
  type OptionReader as Reader,
  readBatch,
  readBuilders,
  readMinutes,
  readTime,
} from '../core/plan/demand/read-option.ts';
import { readGroup, readHeads, readPeople } from '../core/plan/cohort/read-people.ts';
import { readRatio, readShare } from '../core/quantity/read.ts';
import { sheetWords } from '../words/sheets.ts';
import { teachingWords } from '../words/teaching.ts';
import type { CommandName } from './command-name.ts';

const text: Reader<string> = (written) => (written === '' ? undefined : written);

const oneOf =
  <W extends string>(...words: readonly W[]): Reader<W> =>
  (written) =>
    words.find((word) => word === written);

const share: Reader<string> = (written) => {
  const reading = readShare(written);
  return reading.ok ? reading.value : undefined;
};

const times: Reader<string> = (written) => {
  const reading = readRatio(written);
  return reading.ok ? reading.value : undefined;
};

const day: Reader<string> = (written) => (isDay(written) ? written : undefined);

export type SheetName = keyof typeof sheetWords.names | keyof typeof teachingWords.sheets;

/** `bench-sheet,labels`: some of the sheets of a guide or a module, each once. */
const sheetNames: Reader<readonly SheetName[]> = (written) => {
  const known = Object.keys({ ...sheetWords.names, ...teachingWords.sheets }) as readonly SheetName[];
  const asked = written.split(',').map((name) => known.find((id) => id === name.trim()));
  return asked.every((id) => id !== undefined) ? [...new Set(asked)] : undefined;
};

const unitsByWord = { metric: 'metric', us: 'US', both: 'both' } as const;

const unitsOf: Reader<Program['units']> = (written) =>
  Object.entries(unitsByWord).find(([word]) => word === written.toLowerCase())?.[1];

/** The options that take a value, each with how it is read. */
export const readers = {
  batch: readBatch,
  builders: readBuilders,
  edition: oneOf('trainees', 'staff'),
  effort: times,
  format: oneOf('text', 'json', 'csv', 'ics'),
  'good-until': readTime,
  group: readGroup,
  instructors: readHeads,
  list: oneOf('shopping', 'days', 'timetable'),
  margin: readMinutes,
  out: text,
  paper: oneOf('A4', 'Letter'),
  people: readPeople,
  'ready-by': readTime,
  sheets: sheetNames,
  spares: share,
  start: readTime,
  stock: text,
  today: day,
  units: unitsOf,
  workspace: text,
} as const satisfies Readonly<Record<string, Reader<unknown>>>;

export type ValueName = keyof typeof readers;

/** Those that may stand several times: as if all they say stood in one, with commas between. */
export const repeatable: readonly ValueName[] = ['people'];

/** Where a command takes fewer values than others. */
const narrower: { readonly [C in CommandName]?: { readonly [N in ValueName]?: Reader<unknown> } } = {
  check: { format: oneOf('text', 'json') },
};

export function readerOf(command: CommandName, name: ValueName): Reader<unknown> {
  return narrower[command]?.[name] ?? readers[name];
}

/** The options that are there or not. */
export const flags = ['help', 'trace', 'what-if'] as const;
export type FlagName = (typeof flags)[number];
export type OptionName = ValueName | FlagName;

type ValueOf<R> = R extends Reader<infer T> ? T : never;

/** The options of a call, read. */
export type Values = { readonly [K in ValueName]?: ValueOf<(typeof readers)[K]> } & {
  readonly [K in FlagName]?: true;
};
