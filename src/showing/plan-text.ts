import { planTextWords as words } from '../words/plan-text.ts';
import { planWords } from '../words/plan.ts';
import { type Column, inColumns, indented, wrapped } from './columns.ts';
import { capital, fill, listed } from './fill.ts';
import type {
  Shown,
  ShownCaution,
  ShownFact,
  ShownLine,
  ShownPlan,
  ShownPurchase,
  ShownSchedule,
} from './shown.ts';

/**
 * A plan as the command line prints it: plain text, aligned, no line above `width`, no colours. Ends with a line end.
 */
export function planText(plan: ShownPlan, width = 80): string {
  const inner = width - 2;
  const blocks = [
    headBlock(plan, width),
    block(words.careful, carefulLines(plan, inner)),
    block(words.buy, shoppingLines(plan.shopping, inner)),
    block(words.costs, costLines(plan, inner)),
    block(words.tools, toolLines(plan.tools, inner)),
    block(words.schedule, scheduleLines(plan.schedule, inner)),
    block(
      words.warnings,
      plan.warnings.flatMap(({ text }) => item('-', text, inner)),
    ),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n')}\n`;
}

/** A heading and what stands below it; nothing where nothing does. */
function block(heading: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : [heading, ...indented(lines)];
}

/** A mark, and a text that hangs beside it. */
function item(mark: string, text: string, width: number): string[] {
  return inColumns([left, wrapping], [[mark, text]], width);
}

const left: Column = { align: 'left' };
const right: Column = { align: 'right' };
const wrapping: Column = { align: 'left', wraps: true };

const isSaid = ({ text }: Shown): boolean => text !== '';

function headBlock(plan: ShownPlan, width: number): string[] {
  const [only, ...others] = plan.lines;
  const single = only && others.length === 0 ? [only] : [];
  const facts = [...plan.facts, ...single.flatMap((line) => line.facts)];
  const counts = plan.lines.flatMap(({ count, title }) =>
    wrapped(
      others.length === 0 ? count.text : fill(words.ofLine, { line: title.text, text: count.text }),
      width,
    ),
  );
  return [
    ...wrapped(plan.title.text, width),
    ...counts,
    ...wrapped(plan.trainingOnly.text, width),
    '',
    ...indented(factLines(facts, width - 2)),
  ];
}

function factLines(facts: readonly ShownFact[], width: number): string[] {
  const byId = new Map(facts.map((fact) => [fact.id, fact]));
  return inColumns(
    [left, wrapping],
    [...byId.values()].map(({ name, value }) => [name.text, value.text]),
    width,
  );
}

/** Cautions first, most severe on top; then what the products are; then who has the last word. */
function carefulLines({ lines, defers }: ShownPlan, width: number): string[] {
  const cautions = lines.flatMap((line) => [
    ...(lines.length > 1 && line.cautions.length > 0 ? [line.title.text] : []),
    ...inColumns(
      [left, wrapping],
      line.cautions.map((caution) => [caution.word.text, cautionText(caution)]),
      width,
    ),
  ]);
  const hazards = lines.flatMap((line) => hazardLines(line, lines.length > 1, width));
  return [...cautions, ...spaced(hazards), ...spaced(wrapped(defers.text, width))];
}

function cautionText({ hazard, harm, avoid, steps }: ShownCaution): string {
  const where = isSaid(steps) ? [fill(words.inSteps, { steps: steps.text })] : [];
  return [hazard, harm, ...avoid]
    .filter(isSaid)
    .map(({ text }) => text)
    .concat(where)
    .join(' ');
}

/** Each danger of a product once, with the numbers of the steps that meet it. */
function hazardLines({ steps, title }: ShownLine, several: boolean, width: number): string[] {
  const met = new Map<string, string[]>();
  for (const step of steps)
    for (const { text } of step.hazards) met.set(text, [...(met.get(text) ?? []), step.number.text]);
  const rows = [...met].map(([text, numbers]) => [stepsName(numbers), text]);
  return [...(several && rows.length > 0 ? [title.text] : []), ...inColumns([left, wrapping], rows, width)];
}

function stepsName(numbers: readonly string[]): string {
  const { step, steps } = planWords.cautions;
  return fill(numbers.length === 1 ? step : steps, {
    steps: listed(numbers, planWords.listComma, planWords.listAnd),
  });
}

/** Lines with an empty one before them; nothing where there are none. */
function spaced(lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', ...lines];
}

function shoppingLines({ rows, deliveries, total, notes }: ShownPlan['shopping'], width: number): string[] {
  if (rows.length === 0) return [];
  const { material, needed, packs, cost, left: leftOver } = words.columns;
  const table = inColumns(
    [wrapping, right, wrapping, right, right],
    [
      [material, needed, packs, cost, leftOver],
      ...rows.map(purchaseCells),
      ...deliveries.map(({ name, charge }) => [name.text, '', words.delivery, charge.text]),
      [words.total, '', '', total.text],
    ],
    width,
  );
  const orders = inColumns(
    [left, wrapping],
    deliveries.filter(({ when }) => isSaid(when)).map(({ name, when }) => [name.text, when.text]),
    width,
  );
  return [...table, ...spaced(orders), ...spaced(notes.flatMap(({ text }) => wrapped(text, width)))];
}

function purchaseCells({ name, needed, fromStock, packs, cost, left: leftOver }: ShownPurchase): string[] {
  const bought = [fromStock, packs].filter(isSaid).map(({ text }) => text);
  return [name.text, needed.text, bought.join(planWords.listComma), cost.text, leftOver.text];
}

/** Where the plan is of several lines, the costs of each stand in a column under its number. */
function costLines({ costs, lines }: ShownPlan, width: number): string[] {
  const columns = lines.map(() => right);
  const heads =
    lines.length > 1 ? [['', ...lines.map((_, i) => fill(words.lineNumber, { n: String(i + 1) })), '']] : [];
  const rows = costs.map(({ name, each, means }) => [
    name.text,
    ...lines.map((_, i) => each[i]?.text ?? ''),
    means.text,
  ]);
  const legend =
    lines.length > 1
      ? lines.map(({ title }, i) => fill(words.lineIs, { n: String(i + 1), line: title.text }))
      : [];
  return [
    ...legend.flatMap((text) => wrapped(text, width)),
    ...inColumns([left, ...columns, wrapping], [...heads, ...rows], width),
  ];
}

function toolLines(tools: ShownPlan['tools'], width: number): string[] {
  return inColumns(
    [wrapping, left, left],
    tools.map(({ name, need, owned }) => [name.text, need.text, owned.text]),
    width,
  );
}

function scheduleLines({ none, says, days, ready, bound }: ShownSchedule, width: number): string[] {
  if (isSaid(none)) return wrapped(none.text, width);
  const lists = days.flatMap(({ day, rows }) => [
    '',
    capital(day.text),
    ...indented(inColumns([left, left, wrapping], rows.map(dayCells), width - 2)),
  ]);
  const ends = [...ready, bound].flatMap(({ text }) => wrapped(text, width));
  return [...wrapped(says.text, width), ...lists, ...spaced(ends)];
}

function dayCells({ from, to, who, what, then }: ShownSchedule['days'][number]['rows'][number]): string[] {
  const time = fill(planWords.schedule.range, { from: from.text, to: to.text });
  return [
    time,
    who.text,
    [what, then]
      .filter(isSaid)
      .map(({ text }) => text)
      .join(planWords.listComma),
  ];
}
