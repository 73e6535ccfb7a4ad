import { Bug, type Diagnostic } from '../core/diagnostic.ts';
import type { Workspace } from '../core/model/workspace.ts';
import type { Plan, PlannedLine, StepNeed, StepTake } from '../core/plan/result.ts';
import { inCurrency } from '../core/money/money.ts';
import { type Exact, exact, one } from '../core/quantity/exact.ts';
import { type Measure, compare, convert, quantity, sameDimension, times } from '../core/quantity/quantity.ts';
import { dimensionOf } from '../core/quantity/units.ts';
import { planWarnings } from '../words/diagnostics/plan.ts';
import { planWords } from '../words/plan.ts';
import { showAsWritten, showExactly, usualReading } from './amounts.ts';
import { asSentence } from './author-text.ts';
import { fill, inWords, listed } from './fill.ts';
import { showMoney } from './money.ts';
import { withThousands } from './numbers.ts';
import { useName } from './names.ts';
import { readingOf } from './readings.ts';
import { roundedFor } from './shares.ts';
import { type Shown, shown } from './shown.ts';

/** What the reader of the plan should know: what the planner found, then where a finer scale is needed. */
export function showWarnings(key: string, plan: Plan, workspace: Workspace): readonly Shown[] {
  const found = warningTexts(plan, workspace, (code) => !ofShopping.includes(code));
  const coarse = plan.lines.flatMap((line) => coarseReadings(line, workspace));
  return [...new Set([...found, ...coarse])].map((text, i) => shown(`${key}[${i}]`, text));
}

/** What should be known before ordering stands with the shopping list. */
export function showShoppingNotes(key: string, plan: Plan, workspace: Workspace): readonly Shown[] {
  const texts = warningTexts(plan, workspace, (code) => ofShopping.includes(code));
  return texts.map((text, i) => shown(`${key}[${i}]`, text));
}
const ofShopping: readonly string[] = [
  'price-missing',
  'bought-by-area',
  'arrival-unsaid',
  'free-delivery-near',
];

/** Warnings that say the same of several things are one sentence about them all: by code, the fact that is listed. */
const listedFacts: Readonly<Record<string, string>> = {
  'arrival-unsaid': 'material',
  'bought-by-area': 'material',
  'price-missing': 'material',
  'station-not-listed': 'station',
  'tool-not-listed': 'tool',
};

function warningTexts(
  plan: Plan,
  workspace: Workspace,
  isMeant: (code: string) => boolean,
): readonly string[] {
  const meant = plan.warnings.filter(({ code }) => isMeant(code));
  const codes = [...new Set(meant.map(({ code }) => code))];
  return codes.flatMap((code) => {
    const alike = meant.filter((warning) => warning.code === code);
    const fact = listedFacts[code];
    return (fact === undefined ? alike : [joined(alike, fact)]).map((warning) =>
      warningText(warning, workspace),
    );
  });
}

function joined(alike: readonly Diagnostic[], fact: string): Diagnostic {
  const names = [...new Set(alike.map(({ facts }) => facts[fact]!))].map((name) =>
    fact === 'station' ? inWords(name) : name,
  );
  return { ...alike[0]!, facts: { [fact]: listed(names) } };
}

function warningText({ code, variant, facts }: Diagnostic, { program }: Workspace): string {
  const words = planWarnings[`${code}.${variant}`] ?? planWarnings[code];
  if (!words) throw new Bug('a warning of the plan has no words', { code });
  const texts = Object.entries(facts).map(([name, fact]) => [name, factText(fact, program)]);
  return asSentence(fill<string>(words.says, Object.fromEntries(texts) as Record<string, string>));
}

/** Sums of money and whole numbers of a fact, as they are printed everywhere else. */
function factText(fact: string, program: Workspace['program']): string {
  const [, amount, currency] = /^(\d+(?:\.\d+|\/\d+)?) ([A-Z]{3})$/.exec(fact) ?? [];
  const sum = amount && currency ? inCurrency({ amount, currency }, program) : undefined;
  if (sum) return showMoney(sum, program, 'up');
  return /^\d+$/.test(fact) ? withThousands(fact) : fact;
}

/** For each thing measured out, whether a finer tool is needed than the steps have: for the smallest amount of it. */
function coarseReadings(line: PlannedLine, workspace: Workspace): readonly string[] {
  const smallest = new Map<string, StepTake>();
  for (const take of line.steps.flatMap((step) => measuredTakes(step, line))) {
    const name = useName(line.at, take.use, workspace);
    const known = smallest.get(name);
    if (!known || !sameDimension(take.run.unit, known.run.unit)) smallest.set(name, take);
    else if (compare(take.run, known.run) < 0) smallest.set(name, take);
  }
  return [...smallest.values()].flatMap((take) => coarseReading(take, line, workspace));
}

/** Not measured out are pieces, and what is used straight from its pack. */
function measuredTakes({ takes }: StepNeed, line: PlannedLine): readonly StepTake[] {
  const rowOf = (use: string) => line.at.materials.find(({ id }) => id === use);
  return takes.filter(
    ({ use, pieces, run }) => pieces.length === 0 && run.value.n !== 0n && !rowOf(use)?.does,
  );
}

const instruments = ['mass', 'volume', 'length'] as const;

function coarseReading({ use, run }: StepTake, line: PlannedLine, workspace: Workspace): readonly string[] {
  const instrument = instruments.find((dimension) => dimension === dimensionOf(run.unit));
  const reading = readingOf(line, use, run.unit, workspace.tools) ?? usualReading(run.unit);
  const finest = times(run, exact(coarsest));
  if (!instrument || !reading || compare(reading, finest) <= 0) return [];
  return [
    fill(planWords.readings[instrument], {
      amount: showExactly(roundedFor(line, use, run, workspace.tools)),
      material: useName(line.at, use, workspace),
      reading: showExactly(reading),
      finer: finerText(finest, reading.unit),
    }),
  ];
}

/** In the unit of the reading that is too coarse, so that the two compare at a glance. */
function finerText(finest: Measure, unit: string): string {
  return showAsWritten(quantity({ value: handyBelow(convert(finest, unit).value), unit }));
}

/** A reading may be this share of an amount at most: 2 %. Common practice, no source. */
const coarsest = '1/50';

/** The greatest of …, 0.1, 0.2, 0.5, 1, 2, 5, … that is not above `x`: what scales and jugs are made with. */
function handyBelow(x: Exact): Exact {
  const ten = exact(10);
  let power = one;
  while (power.compare(x) > 0) power = power.div(ten);
  while (power.mul(ten).compare(x) <= 0) power = power.mul(ten);
  const steps = [5, 2, 1].map((n) => power.mul(n));
  return steps.find((step) => step.compare(x) <= 0)!;
}
