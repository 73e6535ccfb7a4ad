import { cutPicture } from '../src/rendering/cutting-plan.ts';
import type { ShownCutting, ShownLayout, ShownPiece } from '../src/showing/shown-cutting.ts';
import { cuttingWords } from '../src/words/cutting.ts';
import type { Content, Markup } from './page.tsx';
import { scrolling } from './part.tsx';
import { isSaid, shows } from './place.ts';

const { columns } = cuttingWords;

/**
 * How a material is cut: what from, how near to the least, then each sheet as a picture with its table.
 *
 * @param isSheet  To cut by: a box to tick at each piece, lengths have a table too, and nothing is said of the least.
 */
export function cutMaterial(cutting: ShownCutting, isSheet: boolean): Markup {
  const { name, says, bound, layouts, by, material } = cutting;
  return (
    <section class="cut-material" aria-labelledby={`cut-${material}`}>
      <h3 id={`cut-${material}`} {...shows(name)} />
      <p class="cut-says">
        <span {...shows(says)} /> {isSheet ? null : <span {...shows(bound)} />}
      </p>
      {layouts.map((layout) => cutLayout(layout, by, { isSheet, isOnly: layouts.length === 1 }))}
    </section>
  );
}

/** What it is cut from stands in its heading where there are several; of one, the sentence above has said it. */
function cutLayout(
  layout: ShownLayout,
  by: ShownCutting['by'],
  { isSheet, isOnly }: { readonly isSheet: boolean; readonly isOnly: boolean },
): Markup {
  const { title, size, drawing } = layout;
  const isLength = by === 'lengths';
  return (
    <div class={`cut-layout by-${by}`}>
      <h4>
        <span {...shows(title)} /> {isOnly ? null : <span class="cut-of" {...shows(size)} />}
      </h4>
      <div class="cut-figure">
        {cutPicture(drawing)}
        {caption(layout, isLength && !isSheet)}
      </div>
      {isLength && !isSheet ? null : pieceTable(layout, isSheet)}
    </div>
  );
}

/** What is left; on a page, of a length, also what it holds. */
function caption({ holds, left }: ShownLayout, isWhole: boolean): Content {
  const texts = [...(isWhole ? [holds] : []), left].filter(isSaid);
  if (texts.length === 0) return null;
  return (
    <p class="cut-rest">
      {texts.map((text) => (
        <span {...shows(text)} />
      ))}
    </p>
  );
}

/** One row a piece; a column where there is nothing to say is left out. */
function pieceTable({ pieces, title }: ShownLayout, ticks: boolean): Markup {
  const several = pieces.some(({ of }) => isSaid(of));
  const placed = pieces.some(({ fromBottom }) => isSaid(fromBottom));
  return scrolling(
    title.text,
    <table class="pieces">
      <thead>
        <tr>
          {ticks ? <td class="tick-cell" /> : null}
          <th scope="col" class="end">
            {columns.number}
          </th>
          <th scope="col">{columns.piece}</th>
          {several ? <th scope="col">{columns.of}</th> : null}
          <th scope="col" class="end">
            {columns.model}
          </th>
          <th scope="col" class="end">
            {columns.size}
          </th>
          {placed
            ? [columns.fromLeft, columns.fromBottom].map((name) => (
                <th scope="col" class="end">
                  {name}
                </th>
              ))
            : null}
        </tr>
      </thead>
      <tbody>{pieces.map((piece) => pieceRow(piece, { ticks, several, placed }))}</tbody>
    </table>,
  );
}

interface Columns {
  readonly ticks: boolean;
  readonly several: boolean;
  readonly placed: boolean;
}

function pieceRow(piece: ShownPiece, { ticks, several, placed }: Columns): Markup {
  return (
    <tr>
      {ticks ? (
        <td class="tick-cell">
          <span class="box" />
        </td>
      ) : null}
      <td class="end number" {...shows(piece.number)} />
      <th scope="row" {...shows(piece.piece)} />
      {several ? <td class="must" {...shows(piece.of)} /> : null}
      <td class="end" {...shows(piece.model)} />
      <td class="end size" {...shows(piece.size)} />
      {placed ? <td class="end" {...shows(piece.fromLeft)} /> : null}
      {placed ? <td class="end" {...shows(piece.fromBottom)} /> : null}
    </tr>
  );
}
