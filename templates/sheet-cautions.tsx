import { pageWords } from '../src/words/pages.ts';
import { sheetWords } from '../src/words/sheets.ts';
import type { BenchSheetView } from './bench-sheet.tsx';
import { cautionPanel } from './caution.tsx';
import type { Content, Markup } from './page.tsx';
import { isSaid, shows } from './place.ts';

/** All cautions in full, most severe first and numbered; the dangers of products; what comes before the sheet. */
export function sheetCautions(view: BenchSheetView): Markup {
  const { line, plan, guide, cautions } = view;
  return (
    <section class="careful">
      <h2>{pageWords.guide.careful}</h2>
      {line.cautions.length > 0 ? (
        <ul class="cautions">
          {line.cautions.map((caution) => cautionPanel(caution, undefined, cautions.numbers[caution.id]))}
        </ul>
      ) : (
        <p>{pageWords.guide.noCautions}</p>
      )}
      {products(view)}
      <p class="defers">
        <span {...shows(plan.defers)} />{' '}
        {isSaid(guide.electrosurgery) ? <span {...shows(guide.electrosurgery)} /> : null}
      </p>
    </section>
  );
}

function products({ cautions: { products: all } }: BenchSheetView): Content {
  if (all.length === 0) return null;
  return (
    <div class="products">
      <b>{sheetWords.products}</b>
      <ul>
        {all.map((danger) => (
          <li {...shows(danger)} />
        ))}
      </ul>
    </div>
  );
}
