import type { Root } from 'hast';
import { offcutHatching } from '../src/rendering/cutting-plan.ts';
import type { ShownGuide } from '../src/showing/show-guide.ts';
import type { ShownCaution, ShownPlan } from '../src/showing/shown.ts';
import { pageWords } from '../src/words/pages.ts';
import { sheetWords } from '../src/words/sheets.ts';
import { cautionPanel } from './caution.tsx';
import { cutMaterial } from './cut-layout.tsx';
import { type Markup, documentOf, securityPolicy } from './page.tsx';
import { shows } from './place.ts';

/** The cutting plan of a guide at one level, to print and to cut by. */
export interface CuttingSheetView {
  readonly language: string;
  readonly root: string;
  /** The guide's own page. */
  readonly back: string;
  readonly guide: ShownGuide;
  readonly plan: ShownPlan;
  readonly batch: string;
  readonly title: string;
  /** Of the steps that cut. */
  readonly cautions: readonly ShownCaution[];
}

const { cutting: words } = sheetWords;

/**
 * The cutting plan as a sheet of its own: cautions of the steps that cut, then each sheet, roll and length as a picture
 * with its table, a box to tick at each piece. A file beside it, `head.css`, prints title, batch and page on each page.
 */
export function cuttingSheet(view: CuttingSheetView): Root {
  const { root, language, back, plan, title } = view;
  return documentOf(
    language,
    root,
    <head>
      {securityPolicy()}
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <title>{`${words.title}: ${title}`}</title>
      <meta name="color-scheme" content="light" />
      <link rel="stylesheet" href={`${root}styles/sheet.css`} />
      <link rel="stylesheet" href="head.css" />
    </head>,
    <body>
      <nav class="on-screen" aria-label={pageWords.mainNav}>
        <a href={back}>{sheetWords.back}</a>
        <span>{sheetWords.howToPrint}</span>
      </nav>
      <main class="sheet cutting-sheet">
        {offcutHatching()}
        {sheetHead(view)}
        {careful(view)}
        {plan.cutting.map((cutting) => cutMaterial(cutting, true))}
      </main>
    </body>,
  );
}

function sheetHead({ guide, plan, batch }: CuttingSheetView): Markup {
  return (
    <header>
      {guide.status === 'draft' ? <p class="draft">{pageWords.draft}</p> : null}
      <h1>
        <span {...shows(guide.title)} />
        {guide.level ? <span class="level" {...shows(guide.level.name)} /> : null}
      </h1>
      <p class="under">
        {[words.title, batch, guide.version.text].filter((text) => text !== '').join(' · ')}
        <strong {...shows(plan.trainingOnly)} />
      </p>
      <ul class="fields">
        {[sheetWords.batchNumber, sheetWords.date, words.cutBy, sheetWords.checkedBy].map((field) => (
          <li>{field}</li>
        ))}
      </ul>
      <p class="how">{words.say}</p>
    </header>
  );
}

function careful({ cautions, plan }: CuttingSheetView): Markup {
  return (
    <section class="careful">
      <h2>{pageWords.guide.careful}</h2>
      <ul class="cautions">{cautions.map((caution) => cautionPanel(caution))}</ul>
      <p class="defers" {...shows(plan.defers)} />
    </section>
  );
}
