import type { Program, RoomCondition, Supplier, WorkingHours } from '../core/model/program.ts';
import { weekdays } from '../core/model/program.ts';
import { readCount, readShare } from '../core/quantity/read.ts';
import { readDuration } from '../core/time/duration.ts';
import { readCurrency, readLabour, readPrice } from './values/money-and-time.ts';
import { readHours, readWeekday } from './values/hours.ts';
import { oneOf, oneOfThese, readDay, readId, readLink, readWords } from './values/plain-words.ts';
import { checkShape } from './shape/check-shape.ts';
import { programShape, type ProgramShape } from './shape/program-shape.ts';
import {
  entries,
  field,
  given,
  mapNamed,
  read,
  readEach,
  readNamed,
  refuse,
  refuseKey,
  type OpenFile,
  type Written,
} from './sheet/written.ts';
import { readDecimal, readLocale, readZone } from './values/place.ts';

/** The program of `program.yaml`; without the digits of its currencies, which depend on the whole workspace. */
export type ProgramRead = Omit<Program, 'minorDigits'>;

type Supplied = NonNullable<ProgramShape['suppliers']>[string];

export function readProgram(file: OpenFile): ProgramRead {
  const from = checkShape({ value: file.sheet.values, path: [], file }, programShape);
  refuseFollows(from);
  for (const key of ['stations', 'owned', 'suppliers'] as const) refuseBadIds(field(from, key));
  const zone = read(from, 'time-zone', readZone);
  return given<ProgramRead>({
    name: read(from, 'name', readWords) ?? '',
    locale: read(from, 'locale', readLocale) ?? 'en',
    timeZone: zone?.zone ?? '',
    zone: zone ?? { zone: '', changes: [], until: 0 },
    currency: read(from, 'currency', readCurrency) ?? '',
    exchange: readExchange(from),
    units: read(from, 'units', readUnits) ?? 'metric',
    paper: read(from, 'paper', oneOfThese(['A4', 'Letter'] as const)) ?? 'A4',
    work: readWork(from),
    builders: readBuilders(from),
    labour: read(from, 'labour', readLabour),
    stations: readNamed(from, 'stations', readCount),
    owned: readNamed(from, 'owned', readCount),
    room: readEach(from, 'room', oneOfThese<RoomCondition>(['cold', 'damp', 'hot'])),
    spares: read(from, 'spares', readShare) ?? '0',
    suppliers: mapNamed(field(from, 'suppliers'), readSupplier),
    address: read(from, 'address', readLink),
    policy: readPolicy(from),
    sayAlso: readSayAlso(from),
  });
}

const readUnits = oneOf<Program['units']>({ metric: 'metric', us: 'US', both: 'both' });

function refuseFollows(from: Written<ProgramShape>): void {
  const follows = field(from, 'follows');
  if (follows) refuseKey(follows, { code: 'not-built-yet', variant: 'follows', facts: {} });
}

function refuseBadIds(map: Written<Readonly<Record<string, unknown>>> | undefined): void {
  for (const [key, value] of entries(map)) {
    const id = readId(key);
    if (!id.ok)
      refuseKey(value, { variant: 'key', ...id.problem, facts: { text: key, ...id.problem.facts } });
  }
}

function readExchange(from: Written<ProgramShape>): Program['exchange'] {
  return mapNamed(field(from, 'exchange'), (rate, currency) => {
    const known = readCurrency(currency);
    if (!known.ok) refuseKey(rate, known.problem);
    const [value, on] = [read(rate, 'rate', readDecimal), read(rate, 'on', readDay)];
    return value !== undefined && on !== undefined ? { rate: value, on } : undefined;
  });
}

function readWork(from: Written<ProgramShape>): WorkingHours {
  const work = field(from, 'work');
  const days = readEach(work, 'days', readWeekday);
  return {
    days: days.length > 0 ? weekdays.filter((day) => days.includes(day)) : weekdays.slice(0, 5),
    hours: readHours(field(work, 'hours')) ?? [[9 * 60, 17 * 60]],
    closed: [...new Set(readEach(work, 'closed', readDay))].sort(),
  };
}

function readBuilders(from: Written<ProgramShape>): number {
  const builders = read(from, 'builders', readCount) ?? 1;
  if (builders === 0) refuse(field(from, 'builders')!, { code: 'count-of-none', facts: {} });
  return builders;
}

function readSupplier(from: Written<Supplied>): Supplier {
  return given<Supplier>({
    name: read(from, 'name', readWords) ?? '',
    delivery: read(from, 'delivery', readPrice),
    freeOver: read(from, 'free-over', readPrice),
    arrivesIn: read(from, 'arrives-in', readDuration),
  });
}

function readPolicy(from: Written<ProgramShape>): Program['policy'] {
  const policy = field(from, 'policy');
  if (!policy) return undefined;
  return given<NonNullable<Program['policy']>>({
    contact: read(policy, 'contact', readWords),
    link: read(policy, 'link', readLink),
    note: read(policy, 'note', readWords),
  });
}

function readSayAlso(from: Written<ProgramShape>): Program['sayAlso'] {
  const words = field(from, 'say-also');
  return mapNamed(words, (_, key) => readEach(words, key, readWords));
}
