import { reviewStatuses } from '../../core/model/reviewed.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { Keeping } from '../../core/model/values.ts';
import type { Plan } from '../../core/plan/result.ts';
import { type Exact, ceil, exact, exactText } from '../../core/quantity/exact.ts';
import { asId } from '../../core/slug.ts';
import { catalogueWords as words } from '../../words/catalogue.ts';
import { pageWords } from '../../words/pages.ts';
import { properly } from '../text/author-text.ts';
import { capital, fill } from '../text/fill.ts';
import { showMoney } from '../text/money.ts';
import { toolName } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import { type Range, isWithin, rangesOver, roundSums } from '../text/ranges.ts';
import { slowestOrder } from '../shopping/show-deliveries.ts';
import { dangerText } from '../safety/danger-text.ts';
import type { FacetId } from '../shown/shown-catalogue.ts';
import { showDuration, showKeeping, showMinutes } from '../text/times.ts';

/** A value that guides may have of a facet. */
export interface FacetValue {
  readonly value: string;
  readonly name: string;
  readonly note?: string;
  /** Where it stands among the others: by number, then by name. */
  readonly place?: number;
}

/** Values of one guide, given all guides (ranges come from the figures of all). */
type Facet = (plans: readonly Plan[], workspace: Workspace) => (plan: Plan) => readonly FacetValue[];

/** By what guides are chosen, in the order of the page. */
export const facets: Readonly<Record<FacetId, Facet>> = {
  skill: () => (plan) => skillsOf(plan),
  cost: (plans, { program }) => ranged(plans, usedEach, roundSums, (sum) => showMoney(sum, program)),
  build: (plans) => ranged(plans, buildTime, wholeTimes, (time) => showMinutes(ceil(time))),
  'hands-on': (plans) => ranged(plans, handsOnEach, handTimes, (time) => showMinutes(ceil(time))),
  order: (_, workspace) => (plan) => orderAhead(plan, workspace),
  keeps: (plans) => ranged(plans, keepsDays, [...keepTimes.keys()].map(exact), keepText),
  hazard: () => dangersMet,
  without: () => dangersMet,
  tool: (_, workspace) => (plan) => toolsNeeded(plan, workspace),
  buy: () => (plan) => [toolsToBuy(plan)],
  status: () => (plan) => [statusOf(plan)],
};

/** Used cost of one good model. */
export function usedEach({ cost }: Plan): Exact {
  return cost.each[0]!.used;
}

/** Minutes from the first hands-on to the last model ready; absent without a schedule. */
export function buildTime({ schedule }: Plan): Exact | undefined {
  return 'none' in schedule ? undefined : exact(schedule.buildTime);
}

/** Person-minutes of hands-on for one good model. */
export function handsOnEach({ cost, lines }: Plan): Exact {
  const { wanted, spares } = lines[0]!;
  return exact(cost.handsOn).div(Math.max(1, wanted + spares));
}

/** Codes of what its products and tools can do, each once, sorted. */
export function dangersOf({ lines }: Plan): readonly string[] {
  return [...new Set(lines[0]!.steps.flatMap(({ hazards }) => hazards))].sort();
}

/** How many days it keeps at the longest. A month counts as 30: common practice, no source. */
function keepsDays({ lines }: Plan): Exact | undefined {
  const days = lines[0]!.at.keeps.map(({ for: time }) => inDays(time));
  return days.reduce<Exact | undefined>(
    (most, one) => (most && most.compare(one) >= 0 ? most : one),
    undefined,
  );
}

function inDays(time: Keeping): Exact {
  if ('workingDays' in time) return exact(time.workingDays);
  return 'seconds' in time ? exact(time.seconds).div(86_400) : exact(time.months).mul(30);
}

const hours = (...all: readonly number[]): readonly Exact[] => all.map((hour) => exact(hour * 60));
const wholeTimes = hours(1, 2, 4, 8, 24, 48, 72, 120, 168, 336, 672);
const handTimes = [5, 10, 15, 30, 45, 60, 90, 120, 180, 240, 480, 960].map(exact);
const keepTimes: ReadonlyMap<number, Keeping> = new Map<number, Keeping>([
  [1, { seconds: '86400' }],
  [3, { seconds: '259200' }],
  [7, { seconds: '604800' }],
  [30, { months: '1' }],
  [180, { months: '6' }],
  [360, { months: '12' }],
  [720, { months: '24' }],
]);

function keepText(days: Exact): string {
  return showKeeping(keepTimes.get(ceil(days))!);
}

/** The range in which a guide's figure lies; a value of its own where it has none. */
function ranged(
  plans: readonly Plan[],
  figure: (plan: Plan) => Exact | undefined,
  ladder: readonly Exact[],
  show: (limit: Exact) => string,
): (plan: Plan) => readonly FacetValue[] {
  const known = plans.map(figure).filter((value) => value !== undefined);
  const ranges = rangesOver(known, ladder);
  return (plan) => {
    const value = figure(plan);
    if (value === undefined) return [{ value: 'unknown', name: words.unknown, place: ranges.length }];
    const place = ranges.findIndex((range) => isWithin(value, range));
    return place < 0 ? [] : [{ ...rangeNames(ranges[place]!, show), place }];
  };
}

function rangeNames({ least, most }: Range, show: (limit: Exact) => string): Omit<FacetValue, 'place'> {
  const texts = { least: least ? show(least) : '', most: most ? show(most) : '' };
  const ids = { least: least ? exactText(least) : '', most: most ? exactText(most) : '' };
  if (!least) return { value: `to-${ids.most}`, name: fill(words.ranges.upTo, texts) };
  if (!most) return { value: `over-${ids.least}`, name: fill(words.ranges.over, texts) };
  return { value: `${ids.least}-to-${ids.most}`, name: fill(words.ranges.between, texts) };
}

function skillsOf({ lines }: Plan): readonly FacetValue[] {
  const { trains } = lines[0]!.at;
  return trains === undefined ? [] : [{ value: asId(trains), name: capital(properly(trains)) }];
}

function orderAhead(plan: Plan, workspace: Workspace): readonly FacetValue[] {
  const slowest = slowestOrder(plan, workspace);
  if (!slowest) return [{ value: 'nothing', name: words.noOrder, place: 0 }];
  const name = showDuration(slowest);
  return [{ value: asId(name), name, place: ceil(inDays(slowest)) }];
}

function dangersMet(plan: Plan): readonly FacetValue[] {
  return dangersOf(plan).map((danger) => ({
    value: danger.toLowerCase(),
    name: capital(dangerText(danger)),
  }));
}

function toolsNeeded({ tools }: Plan, workspace: Workspace): readonly FacetValue[] {
  return tools.map(({ tool, owned }) => ({
    value: tool,
    name: toolName(tool, workspace),
    note: ownedText(owned),
  }));
}

function ownedText(owned: number | undefined): string {
  if (owned === undefined) return words.ownedUnsaid;
  return owned === 0 ? words.ownedNone : fill(words.owned, { count: showCount(owned) });
}

function toolsToBuy({ tools }: Plan): FacetValue {
  const value = tools.some(({ toBuy }) => toBuy > 0) ? 'some' : 'none';
  return { value, name: words.buy[value], place: value === 'none' ? 0 : 1 };
}

function statusOf({ lines }: Plan): FacetValue {
  const { status } = lines[0]!.at;
  const place = reviewStatuses.toReversed().indexOf(status);
  return { value: status, name: capital(pageWords.guide.statuses[status]), place };
}
