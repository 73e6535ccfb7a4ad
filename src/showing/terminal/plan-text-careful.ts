import { planTextWords as words } from '../../words/plan-text.ts';
import { planWords } from '../../words/plan.ts';
import { inColumns, indented } from './columns.ts';
import { fill, listed } from '../text/fill.ts';
import { apart, hanging, isSaid, left, numberedTitle, paragraphs, wrapping } from './plan-text-parts.ts';
import type { ShownCaution, ShownLine, ShownPlan } from '../shown/shown-plan.ts';

/** Cautions first, most severe on top; then what the products are; then who has the last word. */
export function carefulLines({ lines, defers }: ShownPlan, width: number): readonly string[] {
  const ofLines = lines.map((line, i) => {
    const title = lines.length > 1 ? [numberedTitle(line, i)] : [];
    const said = [...cautionLines(line, width), ...apart(hazardLines(line, width))];
    return said.length === 0 ? [] : [...title, ...said];
  });
  const said = ofLines
    .filter((ofLine) => ofLine.length > 0)
    .flatMap((ofLine, i) => (i === 0 ? ofLine : apart(ofLine)));
  return [...said, ...(said.length > 0 ? [''] : []), ...paragraphs([defers], width)];
}

function cautionLines({ cautions }: ShownLine, width: number): readonly string[] {
  const room = Math.max(0, ...cautions.map(({ word }) => word.text.length));
  return cautions.flatMap((caution) => [
    ...hanging(caution.word.text.padEnd(room, '\u00a0'), headText(caution), width),
    ...indented(
      caution.avoid.flatMap(({ text }) => hanging('-', text, width - room - 2)),
      room + 2,
    ),
  ]);
}

/** "Steps 6 and 7. Hot gel sticks to skin. It burns." */
function headText({ hazard, harm, steps }: ShownCaution): string {
  const text = [hazard, harm]
    .filter(isSaid)
    .map((said) => said.text)
    .join(' ');
  return isSaid(steps) ? fill(words.inSteps, { steps: steps.text, text }) : text;
}

/** Each danger of a product once, with the numbers of the steps that meet it; the same numbers are said once. */
function hazardLines({ steps }: ShownLine, width: number): readonly string[] {
  const met = new Map<string, string[]>();
  for (const step of steps)
    for (const { text } of step.hazards) met.set(text, [...(met.get(text) ?? []), step.number.text]);
  const rows = [...met].map(([text, numbers]) => [stepsName(numbers), text] as const);
  const saidOnce = rows.map(([name, text], i) => [rows[i - 1]?.[0] === name ? '' : name, text]);
  return inColumns([left, wrapping], saidOnce, width);
}

function stepsName(numbers: readonly string[]): string {
  const { step, steps } = planWords.cautions;
  return fill(numbers.length === 1 ? step : steps, { steps: listed(numbers) });
}
