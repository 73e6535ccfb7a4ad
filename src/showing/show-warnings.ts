import { Bug, type Diagnostic } from '../core/diagnostic.ts';
import type { Workspace } from '../core/model/workspace.ts';
import type { Plan, PlannedLine, StepNeed, StepTake } from '../core/plan/result.ts';
import { exact } from '../core/quantity/exact.ts';
import { type Measure, compare, convert, quantity, sameDimension, times } from '../core/quantity/quantity.ts';
import { dimensionOf } from '../core/quantity/units.ts';
import { planWarnings } from '../words/diagnostics/plan.ts';
import { planWords } from '../words/plan.ts';
import { showAsWritten, showExactly, usualReading } from './amounts.ts';
import { asSentence } from './author-text.ts';
import { factText } from './fact-text.ts';
import { fill, inWords, listed } from './fill.ts';
import { handyBelow } from './handy.ts';
import { useName } from './names.ts';
import { planClock } from './plan-clock.ts';
import { readingOf } from './readings.ts';
import { roundedFor } from './shares.ts';
import { type Shown, shown } from './shown.ts';
import type { Clock } from './times.ts';

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
  'stock-without-size',
  'amount-beside-pieces',
  'arrival-unsaid',
  'faster-pack',
  'free-delivery-near',
  'opened-goes-off',
  'rest-goes-off',
];

/** Warnings that say the same of several things are one sentence about them all: by code, the fact that is listed. */
const listedFacts: Readonly<Record<string, string>> = {
  'amount-beside-pieces': 'material',
  'arrival-unsaid': 'material',
  'price-missing': 'material',
  'rest-goes-off': 'material',
  'station-not-listed': 'station',
  'tool-not-listed': 'tool',
};

function warningTexts(
  plan: Plan,
  workspace: Workspace,
  isMeant: (code: string) => boolean,
): readonly string[] {
  const alike = new Map<string, Diagnostic[]>();
  for (const warning of plan.warnings.filter(({ code }) => isMeant(code))) {
    const kind = kindOf(warning);
    alike.set(kind, [...(alike.get(kind) ?? []), warning]);
  }
  const clock = planClock(plan, workspace);
  return [...alike.values()].map((warnings) => warningText(joined(warnings), clock, workspace));
}

/** Those of one kind differ in the listed fact alone. */
function kindOf({ code, variant = '', facts }: Diagnostic): string {
  const others = Object.entries(facts).filter(([name]) => name !== listedFacts[code]);
  return [code, variant, ...others.flat()].join('|');
}

function joined(alike: readonly Diagnostic[]): Diagnostic {
  const [first] = alike;
  const fact = listedFacts[first!.code];
  if (fact === undefined) return first!;
  const names = [...new Set(alike.map(({ facts }) => facts[fact]!))].map((name) =>
    fact === 'station' ? inWords(name) : name,
  );
  return { ...first!, facts: { ...first!.facts, [fact]: listed(names) } };
}

function warningText({ code, variant, facts }: Diagnostic, clock: Clock, workspace: Workspace): string {
  const words = planWarnings[`${code}.${variant}`] ?? planWarnings[code];
  if (!words) throw new Bug('a warning of the plan has no words', { code });
  const texts = Object.entries(facts).map(([name, fact]) => [name, factText(fact, clock, workspace)]);
  return asSentence(fill<string>(words.says, Object.fromEntries(texts) as Record<string, string>));
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
