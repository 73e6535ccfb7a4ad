import type { Root } from 'hast';
import type { StepProse } from '../src/rendering/step-prose.ts';
import type { ShownGuide } from '../src/showing/show-guide.ts';
import type { Shown, ShownLine, ShownPlan } from '../src/showing/shown.ts';
import { pageWords } from '../src/words/pages.ts';
import { sheetWords } from '../src/words/sheets.ts';
import { type Markup, documentOf, securityPolicy } from './page.tsx';
import { isSaid, said, shows } from './place.ts';
import { sheetCautions } from './sheet-cautions.tsx';
import { sheetChecks } from './sheet-checks.tsx';
import { sheetMake } from './sheet-make.tsx';
import { sheetRecord } from './sheet-record.tsx';
import { sheetWeigh } from './sheet-weigh.tsx';

/** A guide at one level as a sheet to print and to work from. */
export interface SheetView {
  readonly language: string;
  readonly root: string;
  /** The guide's own page. */
  readonly back: string;
  readonly guide: ShownGuide;
  readonly plan: ShownPlan;
  readonly line: ShownLine;
  readonly batch: string;
  /** Numbers of the models, in rows that fit the sheet. */
  readonly models: readonly (readonly Shown[])[];
  readonly steps: Readonly<Record<string, StepProse>>;
}

/**
 * The bench sheet: what to read before, what to measure out, what to do with room for readings and times, what to
 * check, what was done otherwise, who releases it. No prices. A file beside it, `head.css`, prints title, batch and
 * page on each page.
 */
export function benchSheet(view: SheetView): Root {
  const { root, language, line, back } = view;
  return documentOf(
    language,
    root,
    <head>
      {securityPolicy()}
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <title>{`${sheetWords.title}: ${line.title.text}`}</title>
      <meta name="color-scheme" content="light" />
      <link rel="stylesheet" href={`${root}styles/sheet.css`} />
      <link rel="stylesheet" href="head.css" />
    </head>,
    <body>
      <nav class="on-screen" aria-label={pageWords.mainNav}>
        <a href={back}>{sheetWords.back}</a>
        <span>{sheetWords.howToPrint}</span>
      </nav>
      <main class="sheet">
        {sheetHead(view)}
        {sheetCautions(view)}
        {clearTheBench(view)}
        {sheetWeigh(view)}
        {sheetMake(view)}
        {sheetChecks(view)}
        {sheetRecord(view)}
      </main>
    </body>,
  );
}

function sheetHead({ guide, plan, line, batch }: SheetView): Markup {
  const facts = [...plan.facts, ...line.facts].filter(({ id }) =>
    ['hands-on', 'build-time', 'keeps'].includes(id),
  );
  return (
    <header>
      {guide.status === 'draft' ? <p class="draft">{pageWords.draft}</p> : null}
      <h1>
        <span {...shows(guide.title)} />
        {guide.level ? <span class="level" {...shows(guide.level.name)} /> : null}
      </h1>
      <p class="under">
        {[sheetWords.title, batch, guide.version.text].filter((text) => text !== '').join(' · ')}
        <strong {...shows(plan.trainingOnly)} />
      </p>
      <dl class="facts">
        {facts.map(({ name, value }) => (
          <div>
            <dt {...shows(name)} />
            <dd {...shows(value)} />
          </div>
        ))}
      </dl>
      <ul class="fields">
        {[sheetWords.batchNumber, sheetWords.date, sheetWords.madeBy, sheetWords.checkedBy].map((field) => (
          <li>{field}</li>
        ))}
      </ul>
    </header>
  );
}

function clearTheBench({ guide, plan }: SheetView): Markup {
  const ticks: readonly string[] = [
    ...sheetWords.clearTicks,
    ...(isSaid(guide.version) ? [said(sheetWords.sheetIs, { version: guide.version.text })] : []),
  ];
  return (
    <section>
      <h2>{sheetWords.clear}</h2>
      <ul class="ticks">
        {ticks.map((tick) => (
          <li>
            {box()}
            {tick}
          </li>
        ))}
      </ul>
      <h3>{sheetWords.haveReady}</h3>
      <ul class="ticks tools">
        {plan.tools.map(({ name, need }) => (
          <li>
            {box()}
            <span>
              <span {...shows(name)} />, <span {...shows(need)} />
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** A box to tick by hand. */
export function box(): Markup {
  return <span class="box" />;
}
