import type { Shown } from '../../src/showing/shown/shown.ts';
import type { ShownCaution } from '../../src/showing/shown/shown-plan.ts';
import { pageWords } from '../../src/words/pages.ts';
import { sheetWords } from '../../src/words/sheets.ts';
import type { BenchSheetView } from './bench-view.ts';
import { cautionPanel } from '../page/caution.tsx';
import { textList } from '../page/lists.tsx';
import type { Content, Markup } from '../page/markup.ts';
import { isSaid, shows } from '../page/place.ts';

/** All cautions in full, numbered, with who has the last word; then the dangers of products. */
export function sheetCautions({ line, plan, guide, cautions }: BenchSheetView): Markup {
  return cautionSection(line.cautions, plan.defers, cautions.numbers, dangers(cautions, guide));
}

/**
 * What can hurt, as a sheet says it at its head: in two columns, most severe first, and behind the last caution who has
 * the last word.
 *
 * @param numbers  What the sheet calls each caution by, where it names them again.
 * @param below    What else can hurt, across the sheet.
 */
export function cautionSection(
  cautions: readonly ShownCaution[],
  defers: Shown,
  numbers: Readonly<Record<string, Shown>> = {},
  below: Content = null,
): Markup {
  return (
    <section class="careful">
      <h2>{pageWords.guide.careful}</h2>
      <div class="caution-columns">
        {cautions.length > 0 ? (
          <ul class="cautions">
            {cautions.map((caution) => cautionPanel(caution, undefined, numbers[caution.id]))}
          </ul>
        ) : (
          <p>{pageWords.guide.noCautions}</p>
        )}
        <p class="defers" {...shows(defers)} />
      </div>
      {below}
    </section>
  );
}

/** Dangers of products and tools, and whether electrosurgery may be used: run on, since a sheet has little room. */
function dangers(
  { products }: BenchSheetView['cautions'],
  { electrosurgery }: BenchSheetView['guide'],
): Markup {
  return (
    <div class="products">
      {products.length > 0 ? (
        <>
          <b>{sheetWords.products}</b>
          {textList(products)}{' '}
        </>
      ) : null}
      {isSaid(electrosurgery) ? <b {...shows(electrosurgery)} /> : null}
    </div>
  );
}
