import { pageWords } from '../src/words/pages.ts';
import type { SheetView } from './bench-sheet.tsx';
import { cautionPanel } from './caution.tsx';
import type { Markup } from './page.tsx';
import { shows } from './place.ts';

/** All cautions in a group, most severe first, and what comes before the sheet. */
export function sheetCautions({ line, plan, guide }: SheetView): Markup {
  return (
    <section class="careful">
      <h2>{pageWords.guide.careful}</h2>
      {line.cautions.length > 0 ? (
        <ul class="cautions">{line.cautions.map((caution) => cautionPanel(caution))}</ul>
      ) : (
        <p>{pageWords.guide.noCautions}</p>
      )}
      <p class="defers">
        <span {...shows(plan.defers)} /> <span {...shows(guide.electrosurgery)} />
      </p>
    </section>
  );
}
