import {
  shares,
  type AgendaItem,
  type ModelsAtStation,
  type Session,
  type Station,
} from '../../core/model/module.ts';
import { readCount } from '../../core/quantity/read.ts';
import type { ModuleShape } from '../shape/module-shape.ts';
import {
  field,
  given,
  items,
  read,
  readEach,
  readNamed,
  type TextReader,
  type Written,
} from '../sheet/written.ts';
import { readClockTime } from '../values/money-and-time.ts';
import { means, oneOfThese, readId, readWords, readYesNo } from '../values/plain-words.ts';
import { noTime } from '../guide/times-of-step.ts';

type SessionShape = NonNullable<ModuleShape['session']>;
type StationShape = NonNullable<ModuleShape['stations']>[number];

/** When it is booked, and what happens in it. */
export function readSession(from: Written<SessionShape> | undefined): Session | undefined {
  if (!from) return undefined;
  return given<Session>({
    booked: read(from, 'booked', readClockTime) ?? noTime,
    where: read(from, 'where', readWords),
    agenda: items(field(from, 'agenda')).map(readAgendaItem),
  });
}

function readAgendaItem(from: Written<SessionShape['agenda'][number]>): AgendaItem {
  return given<AgendaItem>({
    id: read(from, 'id', readId) ?? '',
    what: read(from, 'what', readWords),
    takes: read(from, 'takes', readTimeOrRest),
    stations: readEach(from, 'stations', readId),
    survey: read(from, 'survey', oneOfThese(['before', 'after'] as const)),
    script: readEach(from, 'script', readWords),
  });
}

const readTimeOrRest: TextReader<NonNullable<AgendaItem['takes']>> = (text) =>
  text.trim() === 'the rest' ? means('the rest') : readClockTime(text);

/** A station of a circuit: a seat for one person, led by nobody, unless it says more. */
export function readStation(from: Written<StationShape>): Station {
  return given<Station>({
    id: read(from, 'id', readId) ?? '',
    name: read(from, 'name', readWords),
    seats: read(from, 'seats', readSeats) ?? 'as needed',
    atOne: read(from, 'at-one', readCount) ?? 1,
    takes: read(from, 'takes', readClockTime) ?? noTime,
    changeOver: read(from, 'change-over', readClockTime) ?? noTime,
    practice: read(from, 'practice', readClockTime),
    reset: read(from, 'reset', readClockTime),
    led: read(from, 'led', readYesNo) ?? false,
    models: items(field(from, 'models')).map(readModels),
    tools: items(field(from, 'tools')).map(readTool),
    meanwhile: readEach(from, 'meanwhile', readWords),
  });
}

const readSeats: TextReader<Station['seats']> = (text) =>
  text.trim() === 'as needed' ? means('as needed') : readCount(text);

function readModels(from: Written<NonNullable<StationShape['models']>[number]>): ModelsAtStation {
  return given<ModelsAtStation>({
    guide: read(from, 'guide', readId) ?? '',
    level: read(from, 'level', readId),
    version: read(from, 'version', readWords),
    uses: read(from, 'uses', readCount) ?? 1,
    share: read(from, 'share', oneOfThese(shares)) ?? 'mixed',
    besides: readNamed(from, 'besides', readCount),
  });
}

function readTool(from: Written<NonNullable<StationShape['tools']>[number]>): Station['tools'][number] {
  return {
    use: read(from, 'use', readId) ?? '',
    count: read(from, 'count', readCount) ?? 1,
    each: read(from, 'each', oneOfThese(['seat', 'person', 'station'] as const)) ?? 'seat',
  };
}
