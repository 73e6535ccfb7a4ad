import type { Workspace } from '../../core/model/workspace.ts';
import type { Plan } from '../../core/plan/result.ts';
import { type Exact, ceil } from '../../core/quantity/exact.ts';
import { catalogueWords as words } from '../../words/catalogue.ts';
import { capital } from '../text/fill.ts';
import { type FacetValue, buildTime, dangersOf, facets, handsOnEach, usedEach } from './facets.ts';
import { showSum } from '../text/money.ts';
import { showCount } from '../text/numbers.ts';
import { showKeeps } from '../plan/show-facts.ts';
import { dangerText } from '../safety/danger-text.ts';
import { type Shown, shown } from '../shown/shown.ts';
import type {
  FacetId,
  OrderId,
  ShownCatalogue,
  ShownEntry,
  ShownFacet,
  ShownOption,
} from '../shown/shown-catalogue.ts';
import { showMinutes, showWork } from '../text/times.ts';

/**
 * The catalogue of guides, each by the plan of its published batch: figures, choices with counts, places in each
 * order. A page places it, and a browser compares its tokens: neither calculates.
 */
export function showCatalogue(plans: readonly Plan[], workspace: Workspace): ShownCatalogue {
  const valuesOf = facetIds.map((id) => [id, plans.map(facets[id](plans, workspace))] as const);
  const shownFacets = valuesOf
    .map(([id, values]) => showFacet(id, values))
    .filter(({ options }) => options.some(({ count }) => count.text !== showCount(plans.length)));
  const there = new Set<string>(shownFacets.map(({ id }) => id));
  const ranks = ranksOf(plans);
  const longest = Math.max(1, ...plans.map((plan) => ceilOr(buildTime(plan), 0)));
  return {
    facets: shownFacets,
    longest: shown('longest', showMinutes(longest)),
    entries: plans.map((plan, i) => ({
      ...showEntry(`entries[${i}]`, plan, longest, workspace),
      has: valuesOf
        .filter(([id]) => there.has(id))
        .flatMap(([id, values]) => values[i]!.map(({ value }) => `${id}:${value}`))
        .join(' '),
      ranks: Object.fromEntries(orderIds.map((id) => [id, ranks[id][i]!])) as Record<OrderId, number>,
    })),
  };
}

const facetIds = Object.keys(facets) as readonly FacetId[];
const orderIds = Object.keys(words.orders) as readonly OrderId[];

/** @param values  Of each guide. */
function showFacet(id: FacetId, values: readonly (readonly FacetValue[])[]): ShownFacet {
  const key = `facets.${id}`;
  const says: Partial<Record<FacetId, string>> = words.facetSays;
  const known = new Map(values.flat().map((value) => [value.value, value]));
  return {
    id,
    name: shown(`${key}.name`, words.facets[id]),
    says: shown(`${key}.says`, says[id] ?? ''),
    keeps: id === 'without' ? 'none' : 'any',
    options: inOrder([...known.values()]).map((value) =>
      showOption(
        `${key}.${value.value}`,
        value,
        values.filter((of) => of.some((own) => own.value === value.value)).length,
      ),
    ),
  };
}

function inOrder(values: readonly FacetValue[]): readonly FacetValue[] {
  const byName = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
  return [...values].sort((a, b) => (a.place ?? 0) - (b.place ?? 0) || byName(a.name, b.name));
}

function showOption(key: string, { value, name, note = '' }: FacetValue, count: number): ShownOption {
  return {
    value,
    name: shown(`${key}.name`, name),
    note: shown(`${key}.note`, note),
    count: shown(`${key}.count`, showCount(count)),
  };
}

function showEntry(
  key: string,
  plan: Plan,
  longest: number,
  workspace: Workspace,
): Omit<ShownEntry, 'has' | 'ranks'> {
  const text = (name: string, value: string): Shown => shown(`${key}.${name}`, value);
  const build = buildTime(plan);
  return {
    cost: text('cost', showSum(usedEach(plan), workspace.program, plan.cost.complete)),
    build: text('build', build ? showMinutes(ceil(build)) : words.unknown),
    handsOn: text('handsOn', showWork(ceil(handsOnEach(plan)))),
    keeps: text('keeps', showKeeps(plan.lines[0]!.at)),
    meets: dangersOf(plan).map((danger, i) => shown(`${key}.meets[${i}]`, capital(dangerText(danger)))),
    ...(build ? { span: spanOf(plan, ceil(build), longest) } : {}),
  };
}

/** In thousandths of the longest build time. Hands-on of several people at once is no longer than the build itself. */
function spanOf({ cost }: Plan, build: number, longest: number): { build: number; handsOn: number } {
  const part = (minutes: number): number => Math.ceil((minutes * 1000) / longest);
  return { build: part(build), handsOn: part(Math.min(cost.handsOn, build)) };
}

/** Each guide's place in each order; equal figures stand in the order of the titles, unknown ones last. */
function ranksOf(plans: readonly Plan[]): Readonly<Record<OrderId, readonly number[]>> {
  const byFigure = (figure: (plan: Plan) => Exact | undefined): readonly number[] => {
    const figures = plans.map(figure);
    return ranked(plans, (a, b) => compared(figures[a], figures[b]) || a - b);
  };
  return {
    title: ranked(plans, (a, b) => a - b),
    cost: byFigure(usedEach),
    build: byFigure(buildTime),
    'hands-on': byFigure(handsOnEach),
  };
}

function ranked(plans: readonly Plan[], order: (a: number, b: number) => number): readonly number[] {
  const sorted = plans.map((_, i) => i).sort(order);
  return plans.map((_, i) => sorted.indexOf(i) + 1);
}

function compared(a: Exact | undefined, b: Exact | undefined): number {
  if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
  return a.compare(b);
}

const ceilOr = (value: Exact | undefined, instead: number): number => (value ? ceil(value) : instead);
