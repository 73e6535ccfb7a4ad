import { pageWords } from '../../src/words/pages.ts';
import type { Markup } from './markup.ts';
import type { Site } from './site.ts';

export interface FootParts {
  readonly site: Site;
  /** What the foot says of this page: its guide and version. */
  readonly of?: string;
}

/** The foot of each page: what it is for, what comes before it. */
export function pageFoot({ site, of }: FootParts): Markup {
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
