import type { Root } from 'hast';
import type { ShownModule } from '../../src/showing/module/show-module.ts';
import { shown } from '../../src/showing/shown/shown.ts';
import { pageWords } from '../../src/words/pages.ts';
import { teachingWords } from '../../src/words/teaching.ts';
import type { Content, Markup } from '../page/markup.ts';
import { fieldsOf, sheetOf } from '../sheets/sheet-frame.tsx';

/** What every sheet of a module shares. */
export interface ModuleSheetFacts {
  /** BCP 47. */
  readonly language: string;
  readonly root: string;
  /** The module's own page. */
  readonly back: string;
  readonly module: ShownModule;
  /** Who has the last word, and whom to ask. */
  readonly defers: string;
}

interface ModuleSheetParts {
  readonly id: keyof typeof teachingWords.sheets;
  /** Whether it follows what the reader has set on the page of the session. */
  readonly follows?: true;
  /** Whether `main` itself says who has the last word: on each of several pages, or with what can hurt. */
  readonly defersWithin?: boolean;
  readonly main: Content;
}

/** A sheet of a module as a document of its own. */
export function moduleSheet(
  { module, defers, ...frame }: ModuleSheetFacts,
  { id, follows, defersWithin, main }: ModuleSheetParts,
): Root {
  return sheetOf(
    {
      ...frame,
      name: module.title.text,
      backTo: teachingWords.back,
      defers: shown('defers', defers),
      style: 'module-sheet.css',
    },
    {
      title: teachingWords.sheets[id],
      kind: `module-sheet ${id}`,
      main: (
        <>
          {follows ? (
            <div data-session-sheet="../session/session-data.js">
              <p class="sheet-says" role="status" hidden />
              {main}
            </div>
          ) : (
            main
          )}
          {defersWithin ? null : defersLine(defers)}
        </>
      ),
      ...(follows ? { script: 'session.js' } : {}),
    },
  );
}

/**
 * The head of one page of a document that has many: the document's own title is for those who hear it.
 */
export function onePage(
  view: ModuleSheetFacts,
  title: string,
  fields: readonly string[],
  content: Content,
): Markup {
  return (
    <article class="one-page">
      {headOf(view, <h2 class="sheet-title">{title}</h2>, fields, view.module.title.text)}
      {content}
      {defersLine(view.defers)}
    </article>
  );
}

/** Who has the last word: with what can hurt where that stands on the sheet, else at its foot. */
export function defersLine(text: string): Markup {
  return <p class="defers">{text}</p>;
}

/**
 * What the sheet is, of which module, what is written in above; and that all is for training only.
 *
 * @param of  What it belongs to; the module where left out.
 */
export function moduleSheetHead(
  view: ModuleSheetFacts,
  title: string,
  fields: readonly string[] = [],
  of = view.module.title.text,
): Markup {
  return headOf(view, <h1>{title}</h1>, fields, of);
}

function headOf(
  { module }: ModuleSheetFacts,
  heading: Markup,
  fields: readonly string[],
  of: string,
): Markup {
  const under = [of, module.version.text].filter((text) => text !== '').join(' · ');
  return (
    <header>
      {module.status === 'draft' ? <p class="draft">{pageWords.draft}</p> : null}
      {heading}
      <p class="under">
        {under}
        <strong>{pageWords.trainingOnly}</strong>
      </p>
      {fields.length > 0 ? fieldsOf(fields) : null}
    </header>
  );
}

/** A part of a sheet that stays together where it can. */
export function sheetPart(heading: string, content: Content, kind = 'keep-together'): Markup {
  return (
    <section class={kind}>
      <h2>{heading}</h2>
      {content}
    </section>
  );
}
