import { planTextWords as words } from '../../words/plan-text.ts';
import { planWords } from '../../words/plan.ts';
import { eachInColumns, inColumns, indented } from './columns.ts';
import { fill } from '../text/fill.ts';
import {
  apart,
  hanging,
  isSaid,
  left,
  lineNumber,
  right,
  wrapping,
  wrappingRight,
} from './plan-text-parts.ts';
import type { ShownDelivery, ShownPlan, ShownPurchase } from '../shown/shown-plan.ts';
import { wrapped } from '../text/wrapped.ts';

type Cells = readonly string[];

/** What to buy, by supplier, each with its delivery; then the sum, and what to know before ordering. */
export function buyLines(shopping: ShownPlan['shopping'], width: number): readonly string[] {
  if (shopping.rows.length === 0) return [];
  const groups = groupsOf(shopping);
  const { material, needed, packs, cost, left: leftOver } = words.columns;
  const head = [material, needed, packs, cost, leftOver];
  const total = [words.total, '', '', shopping.total.text, ''];
  const rows = [head, ...groups.flatMap(({ cells }) => cells), total];
  const lines = eachInColumns([wrapping, wrappingRight, wrapping, right, wrappingRight], rows, width - 2);
  const linesOf = (cells: Cells): readonly string[] => indented(lines[rows.indexOf(cells)]!);
  return [
    ...linesOf(head),
    ...groups.flatMap(({ heading, cells }) => [...wrapped(heading, width), ...cells.flatMap(linesOf)]),
    ...linesOf(total),
    ...apart(shopping.notes.flatMap(({ text }) => hanging('-', text, width))),
  ];
}

interface Group {
  readonly heading: string;
  readonly cells: readonly Cells[];
}

/** Purchases by where they are from, in the order of the deliveries; what is not bought comes last. */
function groupsOf({ rows, deliveries }: ShownPlan['shopping']): readonly Group[] {
  const suppliers = [
    ...new Set([...deliveries.map(({ name }) => name.text), ...rows.map(({ supplier }) => supplier.text)]),
  ];
  const named = [...suppliers.filter((name) => name !== ''), ''];
  const groups = named.map((name) => {
    const delivery = deliveries.find((known) => known.name.text === name);
    const bought = rows.filter(({ supplier }) => supplier.text === name).map(purchaseCells);
    return { heading: headingOf(name, delivery), cells: [...bought, ...deliveryCells(delivery)] };
  });
  return groups.filter(({ cells }) => cells.length > 0);
}

function headingOf(name: string, delivery: ShownDelivery | undefined): string {
  if (name === '') return words.notBought;
  return delivery && isSaid(delivery.when)
    ? fill(words.ofSupplier, { supplier: name, when: delivery.when.text })
    : name;
}

function purchaseCells({ name, needed, fromStock, packs, cost, left: leftOver }: ShownPurchase): Cells {
  const isBought = packs.text !== planWords.none || !isSaid(fromStock);
  const bought = [fromStock, ...(isBought ? [packs] : [])].filter(isSaid).map(({ text }) => text);
  return [name.text, needed.text, bought.join(planWords.listComma), cost.text, leftOver.text];
}

function deliveryCells(delivery: ShownDelivery | undefined): readonly Cells[] {
  return delivery ? [[words.delivery, '', '', delivery.charge.text, '']] : [];
}

/** Where the plan is of several lines, the costs of each stand in a column under its number. */
export function costLines({ costs, lines }: ShownPlan, width: number): readonly string[] {
  const several = lines.length > 1;
  const heads = several ? [['', ...lines.map((_, i) => lineNumber(i)), '']] : [];
  const rows = costs.map(({ name, each, means }) => [
    name.text,
    ...lines.map((_, i) => each[i]?.sum.text ?? ''),
    means.text,
  ]);
  return inColumns([left, ...lines.map(() => right), wrapping], [...heads, ...rows], width);
}

export function toolLines(tools: ShownPlan['tools'], width: number): readonly string[] {
  const rows = tools.map(({ name, need, owned }) => [name.text, need.text, owned.text]);
  return inColumns([wrapping, left, left], rows, width);
}
