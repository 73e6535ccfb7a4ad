import { planTextWords as words } from '../../words/plan-text.ts';
import { whatIfWords } from '../../words/what-if.ts';
import { inColumns } from './columns.ts';
import { capital, fill, listed, uncapital } from '../text/fill.ts';
import { hanging, isSaid, paragraphs, right, wrapping } from './plan-text-parts.ts';
import type { ShownCurve, ShownWhatIf } from '../shown/shown-what-if.ts';

/** A sentence for each change: what it brings, and what it takes; those that bring nothing are named in one. */
export function whatIfLines({ rows }: ShownWhatIf, width: number): readonly string[] {
  const idle = rows.filter(({ isIdle }) => isIdle);
  const sentences = rows
    .filter(({ isIdle }) => !isIdle)
    .map(({ change, brings, costs }) =>
      fill(whatIfWords.sentence, { change: change.text, brings: brings.text, costs: costs.text }),
    );
  return [...sentences, ...idleText(idle)].flatMap((text) => hanging('-', text, width));
}

function idleText(rows: ShownWhatIf['rows']): readonly string[] {
  if (rows.length < 2)
    return rows.map(({ change, brings }) =>
      fill(whatIfWords.idle, { change: change.text, brings: brings.text }),
    );
  const changes = rows.map(({ change }) => uncapital(change.text));
  return [fill(whatIfWords.allIdle, { brings: capital(rows[0]!.brings.text), changes: listed(changes) })];
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
