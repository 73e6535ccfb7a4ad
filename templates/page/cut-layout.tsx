import type { ShownCutting, ShownLayout, ShownPiece } from '../../src/showing/shown/shown-cutting.ts';
import { shown } from '../../src/showing/shown/shown.ts';
import { cuttingWords } from '../../src/words/cutting.ts';
import type { Markup } from './markup.ts';
import { scrolling } from './part.tsx';
import { blanks, draws, isSaid, rowsOf, shows, where } from './place.ts';

const { columns } = cuttingWords;

/**
 * How each material is cut: what from, how near to the least, then each sheet as a picture with its table.
 *
 * @param isSheet  To cut by: a box to tick at each piece, lengths have a table too, and nothing is said of the least.
 */
export function cutMaterials(
  cutting: readonly ShownCutting[],
  isSheet: boolean,
): { readonly dataRows: string; readonly children: Markup[] } {
  return rowsOf('cutting', cutting, (item, key) => cutMaterial(item, key, isSheet), blankCutting);
}

function cutMaterial(cutting: ShownCutting, key: string, isSheet: boolean): Markup {
  const { name, says, bound, layouts, by, material } = cutting;
  const row = (layout: ShownLayout, at: string): Markup => cutLayout(layout, at, isSheet);
  return (
    <section class={`cut-material by-${by}`} aria-labelledby={`cut-${material}`}>
      <h3 id={`cut-${material}`} {...shows(name)} />
      <p class="cut-says">
        <span {...shows(says)} /> {isSheet ? null : <span {...shows(bound)} />}
      </p>
      <div {...rowsOf(`${key}.layouts`, layouts, row, blankLayout)} />
    </section>
  );
}

function blankCutting(key: string): ShownCutting {
  return {
    material: '{material}',
    by: '{by}' as ShownCutting['by'],
    ...blanks('name', 'says', 'used', 'bound')(key),
    isLeast: true,
    layouts: [],
  };
}

/** What it is cut from stands in its heading where there are several; of one, the sentence above has said it. */
function cutLayout(layout: ShownLayout, key: string, isSheet: boolean): Markup {
  const { title, size, drawing, left, caption } = layout;
  return (
    <div class="cut-layout">
      <h4>
        <span {...shows(title)} /> <span class="cut-of" {...shows(size)} />
      </h4>
      <div class="cut-figure">
        {draws('cut-layout', `${key}.drawing`, drawing.width > 0 ? drawing : undefined)}
        <p class="cut-rest" {...shows(isSheet ? left : caption)} />
      </div>
      {pieceTable(layout, `${key}.pieces`, isSheet)}
    </div>
  );
}

function blankLayout(key: string): ShownLayout {
  return {
    ...blanks('what', 'size', 'holds', 'left', 'caption', 'sizeHead')(key),
    title: shown(`${key}.title`, '{title}'),
    pieces: [],
    drawing: { by: 'sheets', width: 0, height: 0, goesOn: false, boxes: [], across: [], up: [] },
  };
}

/** One row a piece; a column where there is nothing to say is hidden, and on a page the table of a length. */
function pieceTable({ pieces, title, sizeHead }: ShownLayout, key: string, isSheet: boolean): Markup {
  const placed = pieces.some(({ fromBottom }) => isSaid(fromBottom));
  const several = pieces.some(({ of }) => isSaid(of));
  const row = (piece: ShownPiece): Markup => pieceRow(piece, isSheet);
  return scrolling(
    title.text,
    <table class="pieces">
      <thead>
        <tr>
          {isSheet ? <td class="tick-cell" /> : null}
          <th scope="col" class="end">
            {columns.number}
          </th>
          <th scope="col">{columns.piece}</th>
          <th scope="col" {...where(`${key}[].of`, several)}>
            {columns.of}
          </th>
          <th scope="col" class="end">
            {columns.model}
          </th>
          <th scope="col" class="end" {...shows(sizeHead)} />
          <th scope="col" class="end" {...where(`${key}[].fromLeft`, placed)}>
            {columns.fromLeft}
          </th>
          <th scope="col" class="end" {...where(`${key}[].fromBottom`, placed)}>
            {columns.fromBottom}
          </th>
        </tr>
      </thead>
      <tbody {...rowsOf(key, pieces, row, blankPiece)} />
    </table>,
    isSheet ? {} : where(`${key}[].fromLeft`, placed),
  );
}

function pieceRow(
  { number, piece, of, model, size, fromLeft, fromBottom }: ShownPiece,
  ticks: boolean,
): Markup {
  return (
    <tr>
      {ticks ? (
        <td class="tick-cell">
          <span class="box" />
        </td>
      ) : null}
      <td class="end number" {...shows(number)} />
      <th scope="row" {...shows(piece)} />
      <td class="must" {...shows(of)} />
      <td class="end" {...shows(model)} />
      <td class="end size" {...shows(size)} />
      <td class="end" {...shows(fromLeft)} />
      <td class="end" {...shows(fromBottom)} />
    </tr>
  );
}

const blankPiece = blanks('number', 'piece', 'of', 'model', 'size', 'fromLeft', 'fromBottom');
