import type { Element, Root } from 'hast';
import type { LabelPage } from '../../src/showing/sheets/label-pages.ts';
import type { ShownLabel, ShownLabels } from '../../src/showing/shown/shown-sheets.ts';
import { sheetWords } from '../../src/words/sheets.ts';
import type { Content, Markup } from '../page/markup.ts';
import { isSaid, said, shows } from '../page/place.ts';
import { type SheetFacts, sheetDocument } from './sheet-frame.tsx';

/** A sheet of labels that one can choose. */
export interface LabelChoice {
  readonly id: string;
  /** "3 × 7 of 63.5 × 38.1 mm on A4" */
  readonly name: string;
  /** Labels on one sheet. */
  readonly count: string;
}

export interface LabelsSheetView extends SheetFacts {
  readonly labels: ShownLabels;
  readonly choices: readonly LabelChoice[];
  /** The one that the pages are set for; the browser sets them anew for another. */
  readonly chosen: LabelChoice;
  /** The labels of each page, so set. */
  readonly pages: readonly LabelPage[];
  readonly codeOfLabel?: Element;
}

const { labels: words } = sheetWords;

/** One label a model. A page has no margins: each label lies where the paper has it. */
export function labelsSheet(view: LabelsSheetView): Root {
  const { pages, chosen } = view;
  return sheetDocument(view, {
    title: words.title,
    kind: 'labels-sheet',
    defersAbove: true,
    script: 'labels.js',
    controls: controls(view),
    main: (
      <div class="label-pages" data-stock={chosen.id} role="group" tabindex="0" aria-label={words.title}>
        {pages.map(({ name, labels }) => (
          <section class="label-page" aria-label={name.text}>
            {labels.map((label) => labelOf(label, view))}
          </section>
        ))}
      </div>
    ),
  });
}

/** Only scripts can set labels anew, so only they show what sets them. */
function controls({ choices, chosen, code }: LabelsSheetView): Markup {
  return (
    <div class="on-screen label-controls">
      <h1>{words.title}</h1>
      <p>{words.say}</p>
      <form class="needs-script" hidden>
        <p>
          <label for="stock">{words.stock}</label>
          <select id="stock" name="stock">
            {choices.map(({ id, name, count }) => (
              <option value={id} data-count={count} selected={id === chosen.id}>
                {name}
              </option>
            ))}
          </select>
        </p>
        {numberField('used', words.start, '0', '1', '99')}
        <fieldset>
          <legend>{words.nudge}</legend>
          {numberField('nudge-across', words.right, '-10', '0.5', '10')}
          {numberField('nudge-down', words.down, '-10', '0.5', '10')}
        </fieldset>
        <p>
          <label>
            <input type="checkbox" name="outlines" /> {words.outlines}
          </label>
        </p>
      </form>
      <p class="without-script">{said(words.noScript, { stock: chosen.name })}</p>
      {code ? null : <p>{sheetWords.noCode}</p>}
      <p class="sources">{words.sources}</p>
    </div>
  );
}

function numberField(name: string, label: string, min: string, step: string, max: string): Markup {
  return (
    <p>
      <label for={name}>{label}</label>
      <input type="number" id={name} name={name} min={min} max={max} step={step} value="0" />
    </p>
  );
}

function labelOf({ number, ready, useBy }: ShownLabel, view: LabelsSheetView): Markup {
  const { labels, codeOfLabel } = view;
  const { title, version, contains, madeOf, trainingOnly, apart, keeps } = labels;
  return (
    <article class={codeOfLabel ? 'label has-code' : 'label'}>
      <p class="label-title" {...shows(title)} />
      <p class="label-training">
        <span {...shows(trainingOnly)} /> <span {...shows(apart)} />
      </p>
      <p class="label-number">
        <b {...shows(number)} /> {isSaid(version) ? <span {...shows(version)} /> : null}
      </p>
      <p class="label-fields">
        {field(words.batch, '')}
        {field(words.made, '')}
        {field(words.ready, ready.text)}
        {field(words.useBy, useBy.text)}
      </p>
      <p class="label-contains">
        <b {...shows(contains)} /> {optional(keeps)} <span class="label-made-of" {...shows(madeOf)} />
      </p>
      {codeOfLabel ? structuredClone(codeOfLabel) : null}
    </article>
  );
}

function field(name: string, text: string): Markup {
  return (
    <span class="label-field">
      {name} {text === '' ? <span class="blank" /> : <b>{text}</b>}
    </span>
  );
}

function optional(text: ShownLabels['keeps']): Content {
  return isSaid(text) ? <span {...shows(text)} /> : null;
}
