import { pageWords } from '../../src/words/pages.ts';
import type { Markup, PageParts } from './page.tsx';

/** The foot of each page: what it is for, what comes before it. */
export function pageFoot({ site, of }: PageParts): Markup {
  return (
    <footer class="foot">
      <div class="wrap">
        <p class="training-only">{pageWords.trainingOnly}</p>
        <p>{site.defers}</p>
        <p class="foot-of">{of === undefined ? site.program : `${site.program} · ${of}`}</p>
      </div>
    </footer>
  );
}
