import { planTextWords as words } from '../words/plan-text.ts';
import { indented } from './columns.ts';
import { fill } from './fill.ts';
import { isSaid } from './plan-text-parts.ts';
import type { ShownCutting, ShownLayout } from './shown-cutting.ts';
import { wrapped } from './wrapped.ts';

/** What is cut from what, in a sentence for each material; below it what each sheet holds. */
export function cuttingLines(cutting: readonly ShownCutting[], width: number): readonly string[] {
  return cutting.flatMap(({ name, says, bound, layouts }) => [
    ...wrapped(fill(words.cutMaterial, { material: name.text, says: says.text, bound: bound.text }), width),
    ...layouts.flatMap((layout) => indented(hangingText(layoutText(layout), width - 2))),
  ]);
}

function layoutText({ title, holds, left }: ShownLayout): string {
  const facts = { title: title.text, holds: holds.text };
  return isSaid(left)
    ? fill(words.cutLayoutLeft, { ...facts, left: left.text })
    : fill(words.cutLayout, facts);
}

/** The second line and those after it are moved in. */
function hangingText(text: string, width: number): readonly string[] {
  const [first = '', ...rest] = wrapped(text, width);
  return [first, ...wrapped(rest.join(' '), width - 2).map((line) => `  ${line}`)];
}
