import type { Guide } from '../../model/guide.ts';
import type { ModelsAtStation, Module, People, Station } from '../../model/module.ts';
import type { Rational } from '../../model/values.ts';
import { exact, floor, one } from '../../quantity/exact.ts';
import type { DemandLine } from '../demand.ts';
import { howMany } from '../demand/how-many.ts';
import { type Agenda, agendaOf } from './agenda.ts';
import { careOf, type SessionCare } from './care.ts';
import { groupSizes } from './groups.ts';
import { modelsNeeded } from './models-needed.ts';
import { seatsOf } from './turns.ts';

/** What the reader may change of a module. */
export interface CohortSettings {
  /** How many of each kind of people, by id. */
  readonly people?: Readonly<Record<string, number>>;
  readonly instructors?: number;
  /** Share of spares, of models and of parts; none where left out. */
  readonly spares?: Rational;
}

/** What a session of some people takes. */
export interface CohortPlan {
  readonly people: readonly (People & { readonly groups: readonly number[] })[];
  /** Those who go round, the largest first: groups of the timetable, by their index. */
  readonly groups: readonly { readonly people: string; readonly size: number }[];
  readonly agenda: Agenda;
  /** Seats of each station, by its id. */
  readonly seats: ReadonlyMap<string, number>;
  /** Models of each guide and level. */
  readonly models: readonly ModelNeed[];
  /** Instructors that the ratio and the led stations ask for, and how many there are. */
  readonly instructors: { readonly needed: number; readonly there?: number };
  /** Tools in use at once, by id. */
  readonly tools: ReadonlyMap<string, number>;
  readonly care: SessionCare;
}

/** Models of one guide and level, summed over stations and kinds of people. */
export interface ModelNeed {
  readonly guide: string;
  readonly level?: string;
  /** Without spares. */
  readonly models: number;
  /** That all who practise make of them together. */
  readonly uses: number;
  /** Of those, the ones that nobody practises on. */
  readonly besides: ModelsAtStation['besides'];
  /** On top of them. */
  readonly spares: number;
  /** Parts that wear sooner than the rest: so many of them in all, and their spares beyond those of the models. */
  readonly parts: readonly { readonly part: string; readonly count: number; readonly spares: number }[];
}

/**
 * What a module takes for its people: groups, who is where when, models and parts that wear, instructors, tools.
 *
 * @param guides  Those that its stations name; one that is not there counts no models.
 */
export function cohortOf(
  module: Module,
  guides: Readonly<Record<string, Guide>>,
  settings: CohortSettings = {},
): CohortPlan {
  const people = peopleOf(module, settings);
  const trainees = people.filter(({ as }) => as.includes('trainees'));
  const groups = trainees
    .flatMap((kind) => kind.groups.map((size) => ({ people: kind.id, size })))
    .sort((a, b) => b.size - a.size);
  const largest = groups[0]?.size ?? 0;
  const sizes = groups.map(({ size }) => size);
  const uses = module.stations.flatMap((station) => station.models.map((models) => ({ station, models })));
  const needs = uses.flatMap(({ station, models }) => needOf(station, models, people, guides[models.guide]));
  const there = settings.instructors ?? module.cohort.instructors;
  const agenda = agendaOf(module, sizes);
  return {
    people,
    groups,
    agenda,
    seats: new Map(module.stations.map((station) => [station.id, seatsOf(station, largest)])),
    models: summed(needs).map((need) => withSpares(need, settings.spares ?? '0')),
    instructors: { needed: instructorsFor(module, trainees), ...(there === undefined ? {} : { there }) },
    tools: toolsOf(module, largest),
    care: careOf(module, guides, agenda),
  };
}

function peopleOf({ cohort }: Module, { people = {} }: CohortSettings): CohortPlan['people'] {
  return cohort.people.map((kind) => {
    const count = people[kind.id] ?? kind.count;
    return { ...kind, count, groups: groupSizes(count, cohort.group ?? cohort.ratio ?? Math.max(1, count)) };
  });
}

/** A need before its spares are counted. */
interface Worn extends Omit<ModelNeed, 'parts' | 'spares'> {
  readonly parts: readonly { readonly part: string; readonly count: number }[];
}

/** Those who practise: each kind wears out its own. */
function needOf(
  station: Station,
  { guide, level, uses, share, besides }: ModelsAtStation,
  people: CohortPlan['people'],
  of: Guide | undefined,
): readonly Worn[] {
  if (!of) return [];
  const practising = people.filter(
    ({ as, count }) => count > 0 && (as.includes('trainees') || as.includes('try-out')),
  );
  const worn = (lasts: number): number =>
    practising.reduce((sum, { count, groups }) => {
      const seats = seatsOf(station, groups[0] ?? 0);
      const rounds = groups.length;
      return sum + modelsNeeded(share, { people: count, uses, lasts, seats, atOne: station.atOne, rounds });
    }, 0);
  const extra = Object.values(besides).reduce((sum, count) => sum + count, 0);
  const parts = of.parts.map(({ id, lasts }) => ({ part: id, count: worn(usesOf(lasts)) + extra }));
  const counts = parts.length > 0 ? parts.map(({ count }) => count) : [worn(usesOf(of.lasts)) + extra];
  const models = Math.min(...counts);
  const own = levelOf(of, level);
  const made = practising.reduce((sum, { count }) => sum + count * uses, 0);
  return [{ guide, ...own, models, uses: made, besides, parts: parts.filter(({ count }) => count > models) }];
}

/** The level that is meant where none is named. */
function levelOf({ levels }: Guide, level: string | undefined): { readonly level?: string } {
  const meant = level ?? (levels.find(({ usual }) => usual) ?? levels[0])?.id;
  return meant === undefined ? {} : { level: meant };
}

/** Whole uses; what nobody says wears out never does. */
function usesOf(lasts: string | undefined): number {
  return lasts === undefined ? Infinity : Math.max(1, floor(exact(lasts)));
}

function summed(needs: readonly Worn[]): readonly Worn[] {
  const byKey = new Map<string, Worn>();
  for (const need of needs) {
    const key = `${need.guide} ${need.level ?? ''}`;
    const before = byKey.get(key);
    byKey.set(key, before ? together(before, need) : need);
  }
  return [...byKey.values()];
}

function together(first: Worn, other: Worn): Worn {
  const models = first.models + other.models;
  const named = [...new Set([...first.parts, ...other.parts].map(({ part }) => part))];
  const countIn = ({ parts, models: all }: Worn, part: string): number =>
    parts.find((own) => own.part === part)?.count ?? all;
  const parts = named.map((part) => ({ part, count: countIn(first, part) + countIn(other, part) }));
  return {
    ...first,
    models,
    uses: first.uses + other.uses,
    besides: bothOf(first.besides, other.besides),
    parts,
  };
}

function bothOf(first: Worn['besides'], other: Worn['besides']): Worn['besides'] {
  const kinds = Object.keys({ ...first, ...other }) as (keyof Worn['besides'])[];
  return Object.fromEntries(kinds.map((kind) => [kind, (first[kind] ?? 0) + (other[kind] ?? 0)]));
}

/** As a plan of the demand counts them: of whole models, and of the parts beyond those. */
function withSpares(need: Worn, rate: Rational): ModelNeed {
  const sparesOf = (count: number): number => howMany(count, 0, one, exact(rate)).spares;
  return {
    ...need,
    spares: sparesOf(need.models),
    parts: need.parts.map((part) => ({ ...part, spares: sparesOf(part.count - need.models) })),
  };
}

/** One for each so many trainees, and one at each led station where the trainees are fewer. */
function instructorsFor({ cohort, stations }: Module, trainees: readonly People[]): number {
  const count = trainees.reduce((sum, kind) => sum + kind.count, 0);
  const byRatio = cohort.ratio === undefined ? 0 : Math.ceil(count / cohort.ratio);
  return Math.max(byRatio, stations.filter(({ led }) => led).length);
}

/** All stations stand at once: what one seat, person or station needs, summed. */
function toolsOf({ stations }: Module, group: number): ReadonlyMap<string, number> {
  const tools = new Map<string, number>();
  for (const station of stations) {
    const seats = seatsOf(station, group);
    const sets = { seat: seats, person: seats * station.atOne, station: 1 };
    for (const { use, count, each } of station.tools)
      tools.set(use, (tools.get(use) ?? 0) + count * sets[each]);
  }
  return tools;
}

/** The models as one demand: whole models, and of parts that wear sooner those beyond them. */
export function demandOf(models: CohortPlan['models']): readonly DemandLine[] {
  return models.flatMap(({ guide, level, models, parts }) => {
    const own = { guide, ...(level === undefined ? {} : { level }) };
    const more = parts.map(({ part, count }) => ({ ...own, part, wanted: count - models }));
    return [{ ...own, wanted: models }, ...more];
  });
}
