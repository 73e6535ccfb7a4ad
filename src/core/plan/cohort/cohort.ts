import type { Guide } from '../../model/guide.ts';
import type { Module, People } from '../../model/module.ts';
import type { Rational } from '../../model/values.ts';
import { type Agenda, agendaOf } from './agenda.ts';
import { careOf, type SessionCare } from './care.ts';
import { groupSizes } from './groups.ts';
import { type ModelNeed, modelNeeds, type PeopleInGroups } from './model-needs.ts';
import { seatsOf, setsOf } from './turns.ts';

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
  readonly people: readonly PeopleInGroups[];
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
  /** The same, of what each person has where everybody takes a new one. */
  readonly toolsInAll: ReadonlyMap<string, number>;
  readonly care: SessionCare;
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
  const groups = groupsOf(people);
  const largest = groups[0]?.size ?? 0;
  const sizes = groups.map(({ size }) => size);
  const there = settings.instructors ?? module.cohort.instructors;
  const agenda = agendaOf(module, sizes);
  return {
    people,
    groups,
    agenda,
    seats: new Map(module.stations.map((station) => [station.id, seatsOf(station, largest)])),
    models: modelNeeds(module, guides, people, settings.spares ?? '0'),
    instructors: { needed: instructorsFor(module, trainees), ...(there === undefined ? {} : { there }) },
    tools: toolsOf(module, largest),
    toolsInAll: toolsOf(
      module,
      largest,
      trainees.reduce((sum, { count }) => sum + count, 0),
    ),
    care: careOf(module, guides, agenda),
  };
}

/** Who comes, each kind in its groups. */
export function peopleOf({ cohort }: Module, { people = {} }: CohortSettings): readonly PeopleInGroups[] {
  return cohort.people.map((kind) => {
    const count = Object.hasOwn(people, kind.id) ? people[kind.id]! : kind.count;
    return { ...kind, count, groups: groupSizes(count, cohort.group ?? cohort.ratio ?? Math.max(1, count)) };
  });
}

/** Those who go round, the largest first. */
export function groupsOf(people: readonly PeopleInGroups[]): CohortPlan['groups'] {
  return people
    .filter(({ as }) => as.includes('trainees'))
    .flatMap((kind) => kind.groups.map((size) => ({ people: kind.id, size })))
    .sort((a, b) => b.size - a.size);
}

/** One for each so many trainees, and one at each led station where the trainees are fewer. */
function instructorsFor({ cohort, stations }: Module, trainees: readonly People[]): number {
  const count = trainees.reduce((sum, kind) => sum + kind.count, 0);
  const byRatio = cohort.ratio === undefined ? 0 : Math.ceil(count / cohort.ratio);
  return Math.max(byRatio, stations.filter(({ led }) => led).length);
}

/**
 * All stations stand at once: what one seat, person or station needs, summed.
 *
 * @param persons  Those who have what each person needs; those of the group who sit at the station where left out.
 */
function toolsOf({ stations }: Module, group: number, persons?: number): ReadonlyMap<string, number> {
  const tools = new Map<string, number>();
  for (const station of stations) {
    const sets = { ...setsOf(station, group), ...(persons === undefined ? {} : { person: persons }) };
    for (const { use, count, each } of station.tools)
      tools.set(use, (tools.get(use) ?? 0) + count * sets[each]);
  }
  return tools;
}
