import type { Guide } from '../../model/guide.ts';
import type { ModelsAtStation, Module, People, Station } from '../../model/module.ts';
import { usualLevel } from '../../model/plan-at.ts';
import type { Rational } from '../../model/values.ts';
import { exact, floor, one } from '../../quantity/exact.ts';
import type { DemandLine } from '../demand.ts';
import { howMany } from '../demand/how-many.ts';
import { modelsNeeded } from './models-needed.ts';
import { seatsOf } from './turns.ts';

/** One kind of people, and the sizes of their groups. */
export interface PeopleInGroups extends People {
  readonly groups: readonly number[];
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
 * The models that stand ready for a session, of each guide and level.
 *
 * @param guides  One that is not there counts no models.
 * @param spares  Share of spares, of models and of parts.
 */
export function modelNeeds(
  { stations }: Module,
  guides: Readonly<Record<string, Guide>>,
  people: readonly PeopleInGroups[],
  spares: Rational,
): readonly ModelNeed[] {
  const needs = stations.flatMap((station) =>
    station.models.flatMap((models) => needOf(station, models, people, guides[models.guide])),
  );
  return summed(needs).map((need) => withSpares(need, spares));
}

/** A need before its spares are counted. */
interface Worn extends Omit<ModelNeed, 'parts' | 'spares'> {
  readonly parts: readonly { readonly part: string; readonly count: number }[];
}

/** Whether people of that kind wear models out. */
export function practises({ as }: Pick<People, 'as'>): boolean {
  return as.includes('trainees') || as.includes('try-out');
}

/** Those who practise: each kind wears out its own. */
function needOf(
  station: Station,
  { guide, level, uses, share, besides }: ModelsAtStation,
  people: readonly PeopleInGroups[],
  of: Guide | undefined,
): readonly Worn[] {
  if (!of) return [];
  const practising = people.filter((kind) => kind.count > 0 && practises(kind));
  const worn = (lasts: number): number =>
    practising.reduce((sum, { count, groups }) => {
      const largest = groups[0] ?? 0;
      const seats = Math.min(seatsOf(station, largest), Math.ceil(largest / station.atOne));
      const rounds = groups.length;
      return sum + modelsNeeded(share, { people: count, uses, lasts, seats, atOne: station.atOne, rounds });
    }, 0);
  const extra = Object.values(besides).reduce((sum, count) => sum + count, 0);
  const parts = of.parts.map(({ id, lasts }) => ({ part: id, count: worn(usesOf(lasts)) + extra }));
  const counts = parts.length > 0 ? parts.map(({ count }) => count) : [worn(usesOf(of.lasts)) + extra];
  const models = Math.min(...counts);
  const at = level ?? usualLevel(of);
  const made = practising.reduce((sum, { count }) => sum + count * uses, 0);
  return [
    {
      guide,
      ...(at === undefined ? {} : { level: at }),
      models,
      uses: made,
      besides,
      parts: parts.filter(({ count }) => count > models),
    },
  ];
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

/** The models as one demand: whole models, and of parts that wear sooner those beyond them. */
export function demandOf(models: readonly ModelNeed[]): readonly DemandLine[] {
  return models.flatMap(({ guide, level, models, parts }) => {
    const own = { guide, ...(level === undefined ? {} : { level }) };
    const more = parts.map(({ part, count }) => ({ ...own, part, wanted: count - models }));
    return [{ ...own, wanted: models }, ...more].filter(({ wanted }) => wanted > 0);
  });
}
