import { planTextWords as words } from '../../words/plan-text.ts';
import { planWords } from '../../words/plan.ts';
import { eachInColumns, indented } from './columns.ts';
import { fill, uncapital } from '../text/fill.ts';
import { isSaid, left, wrapping } from './plan-text-parts.ts';
import type { ShownCutting, ShownLayout } from '../shown/shown-cutting.ts';
import { wrapped } from '../text/wrapped.ts';

/**
 * Each material with what is cut from how many sheets, rolls or lengths; then, said once, that no plan is less. Where
 * that is not proven of a material, how much less another might be stands with it.
 */
export function cuttingLines(cutting: readonly ShownCutting[], width: number): readonly string[] {
  const rows = cutting.flatMap(({ layouts }) => layouts);
  const lines = eachInColumns([left, wrapping], rows.map(layoutCells), width - 2);
  const linesOf = (layout: ShownLayout): readonly string[] => indented(lines[rows.indexOf(layout)]!);
  return [
    ...cutting.flatMap((material) => [
      ...wrapped(headText(material), width),
      ...material.layouts.flatMap(linesOf),
    ]),
    ...wrapped(leastText(cutting), width),
  ];
}

function headText({ name, used, bound, isLeast }: ShownCutting): string {
  const head = fill(words.cutMaterial, { material: name.text, used: used.text });
  return isLeast ? head : fill(words.cutNotLeast, { head, bound: bound.text });
}

function layoutCells({ what, holds, left: rest }: ShownLayout): readonly string[] {
  return [
    what.text,
    [holds, rest]
      .filter(isSaid)
      .map(({ text }) => text)
      .join(planWords.andAlso),
  ];
}

/** "No cutting plan costs less."; where another might for some material, of the others. */
function leastText(cutting: readonly ShownCutting[]): string {
  const proven = cutting.filter(({ isLeast }) => isLeast);
  const says = [...new Set(proven.map(({ bound }) => bound.text))].join(' ');
  return proven.length === 0 || proven.length === cutting.length
    ? says
    : fill(words.cutOthers, { says: uncapital(says) });
}
