import type { ShownCheck } from '../../src/showing/library/show-guide.ts';
import type { Shown } from '../../src/showing/shown/shown.ts';
import { sheetWords as words } from '../../src/words/sheets.ts';
import type { BenchSheetView } from './bench-view.ts';
import type { Markup } from '../page/markup.ts';
import { blank, isSaid, rowsOf, shows } from '../page/place.ts';
import { box } from './sheet-frame.tsx';

/** Checks, a box a model below each question; those of runs and of the batch have one box. */
export function sheetChecks({ guide: { checks }, models }: BenchSheetView): Markup {
  const ofModels = checks.filter(({ each }) => each === 'model');
  const others = checks.filter(({ each }) => each !== 'model');
  return (
    <section class="checks">
      <h2>{words.checks}</h2>
      <p class="checks-say">{words.checksSay}</p>
      <ul class="asked">
        {ofModels.map((check) => question(checkName(check), ofEach(models)))}
        {question(words.keep, ofEach(models))}
        {others.map((check) => question(checkName(check), { children: [boxFor(check.of)] }))}
      </ul>
    </section>
  );
}

type Boxes = { readonly children: Markup[] };

/** One box a model. */
function ofEach(models: readonly Shown[]): Boxes {
  return rowsOf('models', models, boxFor, blank);
}

function boxFor(one: Shown): Markup {
  return (
    <li>
      {box()} <span {...shows(one)} />
    </li>
  );
}

/** What is asked, and a box for each thing that it is asked of. */
function question(asks: Markup | string, boxes: Boxes): Markup {
  return (
    <li>
      <p>{asks}</p>
      <ul class="boxes" {...boxes} />
    </li>
  );
}

function checkName({ what, target }: ShownCheck): Markup {
  return (
    <>
      <span {...shows(what)} />
      {isSaid(target) ? ' ' : null}
      {isSaid(target) ? <b class="target" {...shows(target)} /> : null}
    </>
  );
}
