import { drawn } from '../../src/rendering/drawn.ts';
import { offcutHatching } from '../../src/showing/figures/cut-layout.ts';
import { pageWords } from '../../src/words/pages.ts';
import { cutMaterials } from '../page/cut-layout.tsx';
import type { GuideView } from './guide-view.ts';
import type { Content } from '../page/markup.ts';
import { part } from '../page/part.tsx';
import { where } from '../page/place.ts';

const { guide: words } = pageWords;

/** How sheets, rolls and lengths are cut: a picture and a table of each, and the way to the sheet to print. */
export function guideCutting({ plan, cutHref }: GuideView): Content {
  if (plan.cutting.length === 0 || cutHref === undefined) return null;
  const content = (
    <>
      <div class="stack" {...cutMaterials(plan.cutting, false)} />
      {drawn(offcutHatching)}
    </>
  );
  const remark = (
    <>
      <p>{words.cuttingSay}</p>
      <p>
        <a href={cutHref} data-to-sheet="">
          {words.cutSheet}
        </a>
      </p>
    </>
  );
  return part('cutting', words.cutting, content, remark, where('cutting', true));
}
