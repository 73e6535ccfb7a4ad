import type { Diagnostic } from '../diagnostic.ts';
import { inCurrency, printMoney } from '../money/money.ts';
import { zero } from '../quantity/exact.ts';
import { deliveryTime } from './buy/arrivals.ts';
import type { PlanSettings } from './demand.ts';
import { goesOff, type InUse } from './order/goes-off.ts';
import { moreOfIt } from './demand/more-of-it.ts';
import { unitPrice } from './supply/offers.ts';
import { sizesOnHand } from './supply/on-hand.ts';
import type { Run } from './demand/plan-runs.ts';
import { improvedUpTo, scheduledUpTo } from './schedule/schedule-runs.ts';
import { warning } from './refusal.ts';
import { placesNamed } from './schedule/resources.ts';
import type { Plan } from './result.ts';

/** What a plan is judged by. */
export interface ToJudge extends InUse {
  readonly plan: Omit<Plan, 'warnings'>;
  readonly runs: readonly Run[];
  readonly stock: PlanSettings['stock'];
}

/** What the reader of the plan should know: what may hurt first, then what may be missing, then what may be saved. */
export function warningsOf(work: ToJudge): readonly Diagnostic[] {
  return [
    ...work.lines.flatMap((line) => moreOfIt(line, work.workspace)),
    ...firstGoesOff(work),
    ...goesOff(work),
    ...moreMade(work),
    ...pricesMissing(work),
    ...withoutSize(work),
    ...amountsBesidePieces(work),
    ...stationsNotListed(work),
    ...toolsToBuy(work),
    ...notImproved(work),
    ...arrivalsUnsaid(work),
    ...nearFreeDelivery(work),
  ];
}

/** The first models have gone off before the last are ready. */
function firstGoesOff({ plan, lines }: ToJudge): Diagnostic[] {
  if ('none' in plan.schedule) return [];
  return plan.schedule.lines.flatMap(({ ready, useBy }, line) => {
    const isLate = useBy !== undefined && useBy < ready;
    return isLate ? [warning('first-goes-off', { guide: lines[line]!.at.title })] : [];
  });
}

/** Runs that are always full make more than was asked, and more than what fails. */
function moreMade({ lines }: ToJudge): Diagnostic[] {
  return lines.flatMap(({ at, enough, made }) => {
    if (made === enough) return [];
    const facts = { made: String(made), good: String(enough), extra: String(made - enough) };
    return [warning('more-made', { guide: at.title, ...facts })];
  });
}

function pricesMissing({ plan, workspace }: ToJudge): Diagnostic[] {
  const { materials, program } = workspace;
  const unpriced = plan.purchases.filter(({ material, cost, needed }) => {
    return !cost || unitPrice(materials[material]!, needed.unit, program) === undefined;
  });
  return unpriced.map(({ material }) => warning('price-missing', { material: materials[material]!.name }));
}

/** Stock that is an area, of something that is cut: nobody knows what pieces it has room for. */
function withoutSize({ plan, stock, workspace }: ToJudge): Diagnostic[] {
  const unsized = plan.cutting.filter(({ material, by }) => {
    const onHand = stock?.[material];
    return onHand && sizesOnHand(onHand, by).length === 0;
  });
  return unsized.map(({ material }) =>
    warning('stock-without-size', { material: workspace.materials[material]!.name }),
  );
}

/** Of a material that is cut into pieces, amounts are taken from what is left, whatever its shape. */
function amountsBesidePieces({ plan, lines, workspace }: ToJudge): Diagnostic[] {
  const amounts = lines.flatMap(({ at }) => [
    ...at.materials.filter(({ pieces }) => pieces.length === 0),
    ...at.mixes.flatMap(({ of }) => of),
  ]);
  const beside = plan.cutting.filter(({ material }) => amounts.some(({ use }) => use === material));
  return beside.map(({ material }) =>
    warning('amount-beside-pieces', { material: workspace.materials[material]!.name }),
  );
}

function stationsNotListed({ lines, workspace }: ToJudge): Diagnostic[] {
  const unlisted = placesNamed(lines).filter((id) => workspace.program.stations[id] === undefined);
  return unlisted.map((station) => warning('station-not-listed', { station }));
}

/** Tools that nobody says are owned, and those of which more are needed than there are. */
function toolsToBuy({ plan, workspace }: ToJudge): Diagnostic[] {
  const name = (id: string): string => workspace.tools[id]?.name ?? id;
  return plan.tools.flatMap(({ tool, peak, owned, toBuy }) => {
    if (owned === undefined) return [warning('tool-not-listed', { tool: name(tool), peak: String(peak) })];
    const facts = { tool: name(tool), peak: String(peak), owned: String(owned), toBuy: String(toBuy) };
    return toBuy > 0 ? [warning('tool-short', facts)] : [];
  });
}

function notImproved({ runs }: ToJudge): Diagnostic[] {
  const isFirstFound = runs.length > improvedUpTo && runs.length <= scheduledUpTo;
  return isFirstFound
    ? [warning('schedule-not-improved', { runs: String(runs.length), most: String(improvedUpTo) })]
    : [];
}

/** With dates, a pack of which nobody says how long it takes to come counts as at hand. */
function arrivalsUnsaid({ plan, workspace }: ToJudge): Diagnostic[] {
  if ('none' in plan.schedule || plan.schedule.clock === 'reference-week') return [];
  return plan.purchases
    .filter(({ material, packs }) => packs.some(({ pack }) => !deliveryTime(workspace, material, pack)))
    .map(({ material }) => warning('arrival-unsaid', { material: workspace.materials[material]!.name }));
}

/** Buying more to have delivery free is pointed out, where less is missing than the delivery costs; it is not done. */
function nearFreeDelivery({ plan, workspace }: ToJudge): Diagnostic[] {
  const { program } = workspace;
  const digits = program.minorDigits[program.currency] ?? 2;
  return plan.deliveries.flatMap(({ supplier: id, goods, charge }) => {
    const supplier = id === undefined ? undefined : program.suppliers[id];
    const free = supplier?.freeOver && inCurrency(supplier.freeOver, program);
    const missing = free?.sub(goods);
    if (!supplier || !missing || charge.compare(zero) === 0 || missing.compare(charge) > 0) return [];
    const money = (sum: typeof goods): string => `${printMoney(sum, digits)} ${program.currency}`;
    return [
      warning('free-delivery-near', {
        supplier: supplier.name,
        missing: money(missing),
        charge: money(charge),
      }),
    ];
  });
}
