import type { Pack } from '../core/model/material.ts';
import type { Program } from '../core/model/program.ts';
import type { Money } from '../core/model/values.ts';
import type { Workspace } from '../core/model/workspace.ts';
import type { LineCost, Plan, PlanCost, PlannedLine, Purchase } from '../core/plan/result.ts';
import { printMoney } from '../core/money/money.ts';
import type { Exact } from '../core/quantity/exact.ts';
import { exact } from '../core/quantity/exact.ts';
import { printHolding, printMeasure } from '../core/quantity/print.ts';
import { isoTime } from '../core/time/iso-time.ts';
import { scheduleJson } from './schedule-json.ts';

/**
 * A plan for other programs, exact and stable: `benchwright-plan/1`. Amounts stand in the unit of the first pack and
 * money in the program's currency, each a decimal where that ends, else a fraction (`"103/30"`).
 */
export function planJson(plan: Plan, { program, materials }: Workspace) {
  return {
    format: 'benchwright-plan/1',
    demand: plan.lines.map(demandJson),
    requirements: plan.requirements.map(({ material, amount }) => ({
      material,
      amount: printMeasure(amount),
    })),
    cutting: [],
    purchases: plan.purchases.map((purchase) =>
      purchaseJson(purchase, materials[purchase.material]?.packs ?? [], program),
    ),
    deliveries: plan.deliveries.map(({ supplier, goods, charge, ordered, arrives }) => ({
      ...(supplier === undefined ? {} : { supplier }),
      goods: inOwnCurrency(goods, program),
      charge: inOwnCurrency(charge, program),
      ...(ordered === undefined ? {} : { ordered: isoTime(program.zone, ordered) }),
      ...(arrives === undefined ? {} : { arrives: isoTime(program.zone, arrives) }),
    })),
    cost: costJson(plan.cost, plan.lines, program),
    schedule: scheduleJson(plan, program),
    warnings: plan.warnings.map(({ code, variant, facts }) => ({
      code,
      ...(variant ? { variant } : {}),
      facts,
    })),
  };
}

/** Whose models a row counts: `level` is left out where a guide has none. */
export function lineName({ guide, level }: PlannedLine) {
  return { guide, ...(level === undefined ? {} : { level }) };
}

function demandJson(line: PlannedLine) {
  const { wanted, spares, made } = line;
  return { ...lineName(line), wanted, spares, made };
}

function purchaseJson(purchase: Purchase, packs: readonly Pack[], program: Program) {
  const { material, needed, fromStock, cost, left } = purchase;
  return {
    material,
    needed: printMeasure(needed),
    fromStock: printMeasure(fromStock),
    packs: purchase.packs.map(({ pack, count }) => packJson(packs[pack]!, count, program)),
    ...(cost === undefined ? {} : { cost: inOwnCurrency(cost, program) }),
    left: printMeasure(left),
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

function costJson(
  { currency, complete, toolsComplete, outlay, cashToStart, each }: PlanCost,
  lines: Plan['lines'],
  program: Program,
) {
  const sum = (x: Exact) => printMoney(x, digitsOf(currency, program));
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

function inOwnCurrency(amount: Exact, program: Program): string {
  return `${printMoney(amount, digitsOf(program.currency, program))} ${program.currency}`;
}

function moneyText({ amount, currency }: Money, program: Program): string {
  return `${printMoney(exact(amount), digitsOf(currency, program))} ${currency}`;
}

/** Minor digits of a currency that the workspace uses. */
function digitsOf(currency: string, { minorDigits }: Program): number {
  return minorDigits[currency] ?? 2;
}
