import type { Pack } from '../core/model/material.ts';
import type { Program } from '../core/model/program.ts';
import type { Workspace } from '../core/model/workspace.ts';
import type {
  Delivery,
  LineCost,
  Plan,
  PlanCost,
  PlannedLine,
  PlannedSchedule,
  Purchase,
} from '../core/plan/result.ts';
import type { Exact } from '../core/quantity/exact.ts';
import { printHolding, printMeasure } from '../core/quantity/print.ts';
import { isoTime } from '../core/time/iso-time.ts';
import { safetyWords } from '../words/safety.ts';
import { cuttingJson } from './cutting-json.ts';
import { lineName } from './line-name.ts';
import { factsJson, momentOn } from './moment.ts';
import { inOwnCurrency, moneyText, sumText } from './money-text.ts';
import { safetyJson } from './safety-json.ts';
import { scheduleJson } from './schedule-json.ts';

/** What the document calls itself. Within a number fields are added, never changed or taken away. */
export const planFormat = 'benchwright-plan/1';

/**
 * A plan for other programs, exact and stable. Amounts stand in the unit of the first pack and
 * money in the program's currency, each a decimal where that ends, else a fraction (`"103/30"`).
 */
export function planJson(plan: Plan, workspace: Workspace) {
  const { program, materials } = workspace;
  const packsOf = (material: string): readonly Pack[] => materials[material]?.packs ?? [];
  return {
    format: planFormat,
    trainingOnly: safetyWords.trainingOnly,
    defers: safetyWords.order,
    ...(program.policy ? { policy: program.policy } : {}),
    demand: plan.lines.map(demandJson),
    safety: plan.lines.map((line) => safetyJson(line, workspace)),
    requirements: plan.requirements.map(({ material, amount }) => ({
      material,
      amount: printMeasure(amount),
    })),
    cutting: plan.cutting.map((cut) => cuttingJson(cut, plan.lines, packsOf(cut.material), program)),
    purchases: plan.purchases.map((purchase) => purchaseJson(purchase, packsOf(purchase.material), program)),
    deliveries: plan.deliveries.map((delivery) => deliveryJson(delivery, program)),
    cost: costJson(plan.cost, plan.lines, program),
    schedule: scheduleJson(plan, program),
    warnings: plan.warnings.map(({ code, variant, facts }) => ({
      code,
      ...(variant ? { variant } : {}),
      facts: factsJson(facts, momentOn(clockOf(plan), program)),
    })),
  };
}

function clockOf({ schedule }: Plan): PlannedSchedule['clock'] {
  return ('none' in schedule ? schedule.none.clock?.clock : schedule.clock) ?? 'reference-week';
}

function demandJson(line: PlannedLine) {
  const { wanted, forOthers, spares, finished, made } = line;
  return {
    ...lineName(line),
    wanted,
    ...(forOthers === undefined ? {} : { forOthers }),
    spares,
    ...(finished === undefined ? {} : { finished }),
    made,
  };
}

/** What is left over is as a stock file has it: an amount, or the sheets, offcuts and rods of a material that is cut. */
function purchaseJson(purchase: Purchase, packs: readonly Pack[], program: Program) {
  const { material, needed, fromStock, cost, left, leftPieces } = purchase;
  return {
    material,
    needed: printMeasure(needed),
    fromStock: printMeasure(fromStock),
    packs: purchase.packs.map(({ pack, count }) => packJson(packs[pack]!, count, program)),
    ...(cost === undefined ? {} : { cost: inOwnCurrency(cost, program) }),
    left: leftPieces ? leftPieces.map(printHolding) : printMeasure(left),
  };
}

function packJson({ from, holds, price, code }: Pack, count: number, program: Program) {
  return {
    ...(from === undefined ? {} : { supplier: from }),
    ...(code === undefined ? {} : { code }),
    holds: printHolding(holds),
    count,
    ...(price === undefined ? {} : { price: moneyText(price, program) }),
  };
}

function deliveryJson({ supplier, goods, charge, ordered, arrives }: Delivery, program: Program) {
  return {
    ...(supplier === undefined ? {} : { supplier }),
    goods: inOwnCurrency(goods, program),
    charge: inOwnCurrency(charge, program),
    ...(ordered === undefined ? {} : { ordered: isoTime(program.zone, ordered) }),
    ...(arrives === undefined ? {} : { arrives: isoTime(program.zone, arrives) }),
  };
}

function costJson(
  { currency, complete, toolsComplete, outlay, cashToStart, each }: PlanCost,
  lines: Plan['lines'],
  program: Program,
) {
  const sum = (x: Exact) => sumText(x, currency, program);
  return {
    currency,
    complete,
    toolsComplete,
    outlay: sum(outlay),
    cashToStart: sum(cashToStart),
    each: each.map((cost, index) => ({ ...lineName(lines[index]!), ...lineCostJson(cost, sum) })),
  };
}

function lineCostJson({ used, outlay, withTools, withLabour, perUse }: LineCost, sum: (x: Exact) => string) {
  return {
    used: sum(used),
    outlay: sum(outlay),
    withTools: sum(withTools),
    withLabour: sum(withLabour),
    ...(perUse === undefined ? {} : { perUse: sum(perUse) }),
  };
}
