import { planTextWords as words } from '../../words/plan-text.ts';
import { inColumns, indented } from './columns.ts';
import { fill } from '../text/fill.ts';
import { left, numberedTitle, paragraphs, wrapping } from './plan-text-parts.ts';
import type { ShownFact, ShownPlan } from '../shown/shown-plan.ts';
import { wrapped } from '../text/wrapped.ts';

/** What is made, how many, and the figures; of several guides each with its number. */
export function headLines(plan: ShownPlan, width: number): readonly string[] {
  const [only, ...others] = plan.lines;
  if (!only) return wrapped(plan.title.text, width);
  const facts = others.length === 0 ? [...plan.facts, ...only.facts] : plan.facts;
  return [...titleLines(plan, width), '', ...indented(factLines(facts, width - 2))];
}

/** What is made, and how many: all there is to say of a plan by which nothing is. */
export function titleLines(plan: ShownPlan, width: number): readonly string[] {
  const [only, ...others] = plan.lines;
  const titles =
    only && others.length === 0 ? paragraphs([plan.title, only.count], width) : numberedTitles(plan, width);
  return [...titles, ...paragraphs([plan.trainingOnly], width)];
}

function numberedTitles({ lines }: ShownPlan, width: number): string[] {
  return lines.flatMap((line, i) =>
    wrapped(fill(words.ofLine, { line: numberedTitle(line, i), text: line.count.text }), width),
  );
}

/** Each figure once: those of the plan and of its one line have some in common. */
function factLines(facts: readonly ShownFact[], width: number): string[] {
  const byId = new Map(facts.map((fact) => [fact.id, fact]));
  const rows = [...byId.values()].map(({ name, value }) => [name.text, value.text]);
  return inColumns([left, wrapping], rows, width);
}
