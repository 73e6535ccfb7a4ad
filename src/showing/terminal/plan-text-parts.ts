import { planTextWords as words } from '../../words/plan-text.ts';
import { type Column, inColumns } from './columns.ts';
import { fill } from '../text/fill.ts';
import { showCount } from '../text/numbers.ts';
import type { Shown } from '../shown/shown.ts';
import type { ShownLine } from '../shown/shown-plan.ts';
import { wrapped } from '../text/wrapped.ts';

export const left: Column = { align: 'left' };
export const right: Column = { align: 'right' };
export const wrapping: Column = { align: 'left', wraps: true };
export const wrappingRight: Column = { align: 'right', wraps: true };

export const isSaid = ({ text }: Shown): boolean => text !== '';

/** Texts on lines of their own. */
export function paragraphs(texts: readonly Shown[], width: number): string[] {
  return texts.filter(isSaid).flatMap(({ text }) => wrapped(text, width));
}

/** A mark, and a text that hangs beside it. */
export function hanging(mark: string, text: string, width: number): string[] {
  return inColumns([left, wrapping], [[mark, text]], width);
}

/** Lines with an empty one before them; nothing where there are none. */
export function apart(lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', ...lines];
}

/** The number that stands for a line of a plan of several: "(2)". */
export function lineNumber(index: number): string {
  return fill(words.lineNumber, { n: showCount(index + 1) });
}

/** "(2) Layered suture pad". */
export function numberedTitle({ title }: ShownLine, index: number): string {
  return fill(words.line, { n: showCount(index + 1), line: title.text });
}
