import type { Holding, Pack } from '../../core/model/material.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { Plan, Purchase } from '../../core/plan/result.ts';
import { type Measure, compare } from '../../core/quantity/quantity.ts';
import { planWords } from '../../words/plan.ts';
import { showAmount, showAsWritten, showSize } from '../text/amounts.ts';
import { capital, fill, listed } from '../text/fill.ts';
import { showMoney, showSum } from '../text/money.ts';
import { materialName, supplierName } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import { readingOf } from '../text/readings.ts';
import { leftText } from './show-left.ts';
import { showDeliveries } from './show-deliveries.ts';
import { showShoppingNotes } from './show-shopping-notes.ts';
import { shown } from '../shown/shown.ts';
import type { ShownPlan, ShownPurchase } from '../shown/shown-plan.ts';
import { inSystems } from '../text/systems.ts';

/** What to buy in whole packs, what it comes to, and what to know before ordering. */
export function showShopping(key: string, plan: Plan, workspace: Workspace): ShownPlan['shopping'] {
  const { cost } = plan;
  return {
    rows: plan.purchases.map((purchase, i) => showPurchase(`${key}.rows[${i}]`, purchase, plan, workspace)),
    deliveries: showDeliveries(`${key}.deliveries`, plan, workspace),
    total: shown(`${key}.total`, showSum(cost.outlay, workspace.program, cost.complete, 'up')),
    notes: showShoppingNotes(`${key}.notes`, plan, workspace),
  };
}

function showPurchase(key: string, purchase: Purchase, plan: Plan, workspace: Workspace): ShownPurchase {
  const { material, fromStock } = purchase;
  const amount = (of: Measure): string => amountToBuy(of, material, plan, workspace);
  const packs = packsOf(purchase, workspace);
  return {
    material,
    name: shown(`${key}.name`, materialName(material, workspace)),
    needed: shown(`${key}.needed`, amount(purchase.needed)),
    fromStock: shown(
      `${key}.fromStock`,
      fromStock.value.n === 0n ? '' : fill(planWords.shopping.fromStock, { amount: amount(fromStock) }),
    ),
    packs: shown(`${key}.packs`, packsText(purchase, packs, workspace)),
    supplier: shown(`${key}.supplier`, capital(suppliersText(packs, workspace))),
    cost: shown(`${key}.cost`, costText(purchase, workspace)),
    left: shown(`${key}.left`, leftText(purchase, plan, workspace)),
  };
}

/** An amount of a material, as finely as it is measured out. */
export function amountToBuy(of: Measure, material: string, plan: Plan, workspace: Workspace): string {
  const reading = readingOfUses(material, of.unit, plan, workspace);
  return inSystems(workspace.program.units, (system) => showAmount(of, reading, system));
}

export interface BoughtPack {
  readonly pack: Pack;
  readonly count: number;
}

export function packsOf({ material, packs }: Purchase, { materials }: Workspace): readonly BoughtPack[] {
  return packs.flatMap(({ pack, count }) => {
    const bought = materials[material]?.packs[pack];
    return bought ? [{ pack: bought, count }] : [];
  });
}

/** "2 × 500 g + 1 × 250 g". */
function packsText(purchase: Purchase, packs: readonly BoughtPack[], { materials }: Workspace): string {
  const material = materials[purchase.material];
  if (packs.length > 0) return packs.map(packText).join(planWords.shopping.packsAnd);
  if (material?.free) return planWords.shopping.free;
  return material && material.packs.length > 0 ? planWords.none : planWords.shopping.noPack;
}

/** "2 × 500 g". */
export function packText({ pack: { holds }, count }: BoughtPack): string {
  const facts = { count: showCount(count), holds: eachText(holds), inPack: showCount(holds.count) };
  const { shopping } = planWords;
  if (holds.count > 1) return fill(shopping.packsOfMany, facts);
  return fill('sides' in holds.each ? shopping.packsOfSize : shopping.packs, facts);
}

function eachText({ each }: Holding): string {
  return 'sides' in each ? showSize(each) : showAsWritten(each);
}

function suppliersText(packs: readonly BoughtPack[], { program }: Workspace): string {
  const names = packs.map(({ pack }) =>
    pack.from === undefined ? planWords.shopping.noSupplier : supplierName(pack.from, program),
  );
  return listed([...new Set(names)]);
}

function costText({ cost, material }: Purchase, { program, materials }: Workspace): string {
  if (materials[material]?.free) return planWords.none;
  return cost ? showMoney(cost, program, 'up') : planWords.shopping.noPrice;
}

/**
 * The coarsest of what the uses of a material are measured with: 180 mL by a syringe and 14.6 L by a jug are bought by
 * the jug.
 */
function readingOfUses(
  material: string,
  unit: string,
  plan: Plan,
  { tools }: Workspace,
): Measure | undefined {
  const readings = plan.lines.flatMap((line) => {
    const uses = line.steps.flatMap(({ takes }) => takes.filter((take) => take.material === material));
    return uses
      .map(({ use }) => readingOf(line, use, unit, tools))
      .filter((reading) => reading !== undefined);
  });
  return readings.reduce<Measure | undefined>((a, b) => (a && compare(a, b) >= 0 ? a : b), undefined);
}
