import { sheetWords } from '../../words/sheets.ts';
import { fill, listed } from '../text/fill.ts';
import { showCount } from '../text/numbers.ts';
import { type Shown, shown } from '../shown/shown.ts';
import type { ShownLine } from '../shown/shown-plan.ts';

/** Cautions as a bench sheet names them: in full once at its head, by their number above the acts. */
export interface BenchCautions {
  /** By id: "1", in the order of the head. */
  readonly numbers: Readonly<Record<string, Shown>>;
  /** Dangers of products and tools, each once, with the steps where it is met. */
  readonly products: readonly Shown[];
}

export function showBenchCautions(key: string, line: ShownLine): BenchCautions {
  return {
    numbers: Object.fromEntries(
      line.cautions.map(({ id }, i) => [id, shown(`${key}.numbers[${i}]`, showCount(i + 1))]),
    ),
    products: [...productSteps(line)].map(([danger, steps], i) =>
      shown(`${key}.products[${i}]`, productText(danger, steps)),
    ),
  };
}

/** Each danger with the numbers of the steps that meet it. */
function productSteps({ steps }: ShownLine): ReadonlyMap<string, readonly string[]> {
  const met = new Map<string, readonly string[]>();
  for (const { hazards, number } of steps) {
    for (const { text } of hazards) met.set(text, [...(met.get(text) ?? []), number.text]);
  }
  return met;
}

function productText(danger: string, steps: readonly string[]): string {
  const { productStep, productSteps: many } = sheetWords;
  return fill(steps.length === 1 ? productStep : many, { danger, steps: listed(steps) });
}
