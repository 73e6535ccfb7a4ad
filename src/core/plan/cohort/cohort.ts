import type { Guide } from '../../model/guide.ts';
import type { ModelsAtStation, Module, People, Station } from '../../model/module.ts';
import { exact, floor } from '../../quantity/exact.ts';
import type { DemandLine } from '../demand.ts';
import { type Agenda, agendaOf } from './agenda.ts';
import { groupSizes } from './groups.ts';
import { modelsNeeded } from './models-needed.ts';
import { seatsOf } from './turns.ts';

/** What the reader may change of a module. */
export interface CohortSettings {
  /** How many of each kind of people, by id. */
  readonly people?: Readonly<Record<string, number>>;
  readonly instructors?: number;
}

/** What a session of some people takes. */
export interface CohortPlan {
  readonly people: readonly (People & { readonly groups: readonly number[] })[];
  readonly agenda: Agenda;
  /** Models of each guide and level, before spares. */
  readonly models: readonly ModelNeed[];
  /** Instructors that the ratio and the led stations ask for, and how many there are. */
  readonly instructors: { readonly needed: number; readonly there?: number };
  /** Tools in use at once, by id. */
  readonly tools: ReadonlyMap<string, number>;
}

/** Models of one guide and level, summed over stations and kinds of people. */
export interface ModelNeed {
  readonly guide: string;
  readonly level?: string;
  readonly models: number;
  /** Parts that wear sooner than the rest: so many of them in all. */
  readonly parts: readonly { readonly part: string; readonly count: number }[];
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
  const groups = trainees.flatMap((kind) => kind.groups).sort((a, b) => b - a);
  const uses = module.stations.flatMap((station) => station.models.map((models) => ({ station, models })));
  const needs = uses.flatMap(({ station, models }) => needOf(station, models, people, guides[models.guide]));
  const there = settings.instructors ?? module.cohort.instructors;
  return {
    people,
    agenda: agendaOf(module, groups),
    models: summed(needs),
    instructors: { needed: instructorsFor(module, trainees), ...(there === undefined ? {} : { there }) },
    tools: toolsOf(module, groups[0] ?? 0),
  };
}

function peopleOf({ cohort }: Module, { people = {} }: CohortSettings): CohortPlan['people'] {
  return cohort.people.map((kind) => {
    const count = people[kind.id] ?? kind.count;
    return { ...kind, count, groups: groupSizes(count, cohort.group ?? cohort.ratio ?? Math.max(1, count)) };
  });
}

/** Those who practise: each kind wears out its own. */
function needOf(
  station: Station,
  { guide, level, uses, share, besides }: ModelsAtStation,
  people: CohortPlan['people'],
  of: Guide | undefined,
): readonly ModelNeed[] {
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
  const own = level === undefined ? {} : { level };
  return [{ guide, ...own, models, parts: parts.filter(({ count }) => count > models) }];
}

/** Whole uses; what nobody says wears out never does. */
function usesOf(lasts: string | undefined): number {
  return lasts === undefined ? Infinity : Math.max(1, floor(exact(lasts)));
}

function summed(needs: readonly ModelNeed[]): readonly ModelNeed[] {
  const byKey = new Map<string, ModelNeed>();
  for (const need of needs) {
    const key = `${need.guide} ${need.level ?? ''}`;
    const before = byKey.get(key);
    byKey.set(key, before ? together(before, need) : need);
  }
  return [...byKey.values()];
}

function together(one: ModelNeed, other: ModelNeed): ModelNeed {
  const models = one.models + other.models;
  const named = [...new Set([...one.parts, ...other.parts].map(({ part }) => part))];
  const countIn = ({ parts, models: all }: ModelNeed, part: string): number =>
    parts.find((own) => own.part === part)?.count ?? all;
  const parts = named.map((part) => ({ part, count: countIn(one, part) + countIn(other, part) }));
  return { ...one, models, parts };
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
