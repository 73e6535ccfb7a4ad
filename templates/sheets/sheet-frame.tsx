import type { Element, Root } from 'hast';
import type { ShownGuide } from '../../src/showing/library/show-guide.ts';
import type { Shown } from '../../src/showing/shown/shown.ts';
import type { ShownLine, ShownPlan } from '../../src/showing/shown/shown-plan.ts';
import { pageWords } from '../../src/words/pages.ts';
import { sheetWords } from '../../src/words/sheets.ts';
import { printButton } from '../guide/bench.tsx';
import type { Content, Markup } from '../page/markup.ts';
import { documentOf, securityPolicy } from '../page/page.tsx';
import { isSaid, shows } from '../page/place.ts';

/** What every sheet of a guide at one level shares. */
export interface SheetFacts {
  /** BCP 47. */
  readonly language: string;
  readonly root: string;
  /** The guide's own page. */
  readonly back: string;
  readonly guide: ShownGuide;
  readonly plan: ShownPlan;
  readonly line: ShownLine;
  /** "4 models" */
  readonly batch: string;
  /** A code that leads to the guide's page; absent where the program has no address. */
  readonly code?: SheetCode;
  /** What it follows the settings of its address with; absent where it is printed at once. */
  readonly follows?: SheetFollows;
}

export interface SheetFollows {
  /** The way to what the guide's page plans with. */
  readonly data: string;
  readonly level?: string;
  /** What stands at the head of printed pages, with `{batch}` in it. */
  readonly margin?: string;
}

export interface SheetCode {
  readonly picture: Element;
  /** Where it leads. */
  readonly says: string;
}

interface SheetParts {
  readonly title: string;
  /** How the sheet is called in styles. */
  readonly kind: string;
  /** Below `scripts/`. */
  readonly script?: string;
  /** Stands on the screen alone, above the sheet. */
  readonly controls?: Content;
  /** What comes before the guide is said above the sheet, which has no room for it. */
  readonly defersAbove?: true;
  readonly main: Content;
}

/**
 * A sheet as a document of its own. `head.css` beside it has what is of this sheet alone: what stands in the margins of
 * each printed page, or where labels lie.
 */
export function sheetDocument({ line, plan, ...frame }: SheetFacts, parts: SheetParts): Root {
  const of = { name: line.title.text, backTo: sheetWords.back, defers: plan.defers };
  return sheetOf({ ...frame, ...of }, parts);
}

/** What a sheet belongs to, a guide or a module, and the way back to its page. */
export interface SheetFrame extends Pick<SheetFacts, 'language' | 'root' | 'back'> {
  readonly name: string;
  readonly backTo: string;
  readonly defers: Shown;
  /** Below `styles/`, besides that of all sheets. */
  readonly style?: string;
  readonly follows?: SheetFollows;
}

export function sheetOf(
  { language, root, back, name, backTo, defers, style, follows }: SheetFrame,
  { title, kind, script, controls, main, defersAbove }: SheetParts,
): Root {
  return documentOf(
    language,
    root,
    <head>
      {securityPolicy()}
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <title>{`${title}: ${name}`}</title>
      <meta name="color-scheme" content="light" />
      {['sheet.css', ...(style === undefined ? [] : [style])].map((file) => (
        <link rel="stylesheet" href={`${root}styles/${file}`} />
      ))}
      <link rel="stylesheet" href="head.css" />
      {['bench.js', ...(follows ? ['sheet.js'] : []), ...(script === undefined ? [] : [script])].map(
        (file) => (
          <script src={`${root}scripts/${file}`} defer />
        ),
      )}
    </head>,
    <body>
      <nav class="on-screen" aria-label={pageWords.mainNav}>
        <a href={back}>{backTo}</a>
        <span>{sheetWords.howToPrint}</span>
        {printButton()}
        {defersAbove ? <p class="defers" {...shows(defers)} /> : null}
      </nav>
      <main>
        {controls ?? null}
        <div
          class={`sheet ${kind}`}
          data-plan-sheet={follows?.data}
          data-level={follows?.level}
          data-margin={follows?.margin}
        >
          {follows ? <p class="sheet-says" role="status" hidden /> : null}
          {main}
        </div>
      </main>
    </body>,
  );
}

interface HeadParts {
  readonly title: string;
  /** Boxes to write in, below the title. */
  readonly fields?: readonly string[];
  /** Stands between the title and the boxes. */
  readonly more?: Content;
  /** The code needs room that not every sheet has. */
  readonly withCode?: boolean;
}

/** What the sheet is, of which guide and batch, and what every sheet says: for training only. */
export function sheetHead(facts: SheetFacts, { title, fields = [], more, withCode }: HeadParts): Markup {
  const { guide, plan, line } = facts;
  return (
    <header class={withCode ? 'has-code' : undefined}>
      <div class="head-text">
        {guide.status === 'draft' ? <p class="draft">{pageWords.draft}</p> : null}
        <h1>
          <span {...shows(guide.title)} />
          {guide.level ? <span class="level" {...shows(guide.level.name)} /> : null}
        </h1>
        <p class="under">
          {title} · <span {...shows(line.models)} />
          {isSaid(guide.version) ? ` · ${guide.version.text}` : null}
          <strong {...shows(plan.trainingOnly)} />
        </p>
        {more ?? null}
      </div>
      {withCode ? codeOf(facts) : null}
      {fields.length > 0 ? fieldsOf(fields) : null}
    </header>
  );
}

function codeOf({ code }: SheetFacts): Markup {
  return code ? (
    <div class="code">
      {code.picture}
      <span>{code.says}</span>
    </div>
  ) : (
    <p class="code no-code">{sheetWords.noCode}</p>
  );
}

export function fieldsOf(fields: readonly string[]): Markup {
  return (
    <ul class="fields">
      {fields.map((field) => (
        <li>{field}</li>
      ))}
    </ul>
  );
}

/** The heading of a part, and what is done there. */
export function headingThatSays(name: string, says: string): Markup {
  return (
    <h2>
      {name} <small>{says}</small>
    </h2>
  );
}

/** A box to tick by hand. */
export function box(): Markup {
  return <span class="box" />;
}

/** A text with its key, or nothing where there is nothing to say. */
export function spanOf(text: Shown, kind?: string): Content {
  return isSaid(text) ? <span class={kind} {...shows(text)} /> : null;
}
