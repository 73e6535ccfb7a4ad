import { offcutHatching } from '../src/rendering/cutting-plan.ts';
import { pageWords } from '../src/words/pages.ts';
import { cutMaterial } from './cut-layout.tsx';
import type { GuideView } from './guide-page.tsx';
import type { Content } from './page.tsx';
import { part } from './part.tsx';

const { guide: words } = pageWords;

/** How sheets, rolls and lengths are cut: a picture and a table of each, and the way to the sheet to print. */
export function guideCutting({ plan, cutHref }: GuideView): Content {
  if (plan.cutting.length === 0 || cutHref === undefined) return null;
  const content = (
    <div class="stack">
      {plan.cutting.map((cutting) => cutMaterial(cutting, false))}
      {offcutHatching()}
    </div>
  );
  return part(
    'cutting',
    words.cutting,
    content,
    <>
      <p>{words.cuttingSay}</p>
      <p>
        <a href={cutHref}>{words.cutSheet}</a>
      </p>
    </>,
  );
}
