import { planTextWords as words } from '../words/plan-text.ts';
import { inColumns } from './columns.ts';
import { isSaid, paragraphs, right, wrapping } from './plan-text-parts.ts';
import type { ShownCurve, ShownWhatIf } from './shown-what-if.ts';

/** One change a row: what it brings, and what it takes. */
export function whatIfLines({ rows }: ShownWhatIf, width: number): readonly string[] {
  const cells = rows.map(({ change, brings, costs }) => [change.text, brings.text, costs.text]);
  return inColumns([wrapping, wrapping, wrapping], cells, width);
}

/** The sizes that fill their packs, and what each model then takes; with them the batch that is planned. */
export function curveLines({ full, rows }: ShownCurve, width: number): readonly string[] {
  const marked = rows.filter(({ note }) => isSaid(note));
  const cells = marked.map(({ models, each, note }) => [models.text, each.text, note.text]);
  const { models, each, note } = words.sizes;
  return [
    ...paragraphs([full], width),
    ...inColumns([right, right, wrapping], [[models, each, note], ...cells], width),
  ];
}
