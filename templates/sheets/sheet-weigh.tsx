import type { ShownMaterial } from '../../src/showing/shown/shown-plan.ts';
import { sheetWords as words } from '../../src/words/sheets.ts';
import type { BenchSheetView } from './bench-view.ts';
import type { Content, Markup } from '../page/markup.ts';
import { scrolling } from '../page/part.tsx';
import { blanks, rowsOf, shows } from '../page/place.ts';
import { box, headingThatSays } from './sheet-frame.tsx';
import { emptyCells, tableHead } from '../page/table.tsx';

/** What to measure out, with room for what was measured, its lot, and who did and checked it. */
export function sheetWeigh({ line }: BenchSheetView): Content {
  if (line.materials.length === 0) return null;
  return (
    <section>
      {headingThatSays(words.weigh, words.weighSay)}
      {scrolling(
        words.weigh,
        <table class="weigh">
          {tableHead(
            [undefined, 'tick-cell'],
            words.item,
            [words.target, 'w-target'],
            [words.measured, 'w-measured'],
            [words.lot, 'w-lot'],
            [words.by, 'w-by'],
            [words.check, 'w-by'],
          )}
          <tbody {...rowsOf('lines[0].materials', line.materials, row, blankRow)} />
        </table>,
      )}
    </section>
  );
}

type Row = Pick<ShownMaterial, 'name' | 'total' | 'note' | 'ingredientOf'>;

function row({ name, total, note, ingredientOf }: Row): Markup {
  return (
    <tr data-in={ingredientOf}>
      <td class="tick-cell">{box()}</td>
      <th scope="row">
        <span {...shows(name)} />
        <span class="note" {...shows(note)} />
      </th>
      <td class="target" {...shows(total)} />
      {emptyCells(4)}
    </tr>
  );
}

function blankRow(key: string): Row {
  return { ingredientOf: '{ingredientOf}', ...blanks('name', 'total', 'note')(key) };
}
