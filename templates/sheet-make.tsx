import type { StepProse } from '../src/rendering/step-prose.ts';
import type { ShownCaution, ShownStep } from '../src/showing/shown.ts';
import { pageWords } from '../src/words/pages.ts';
import { sheetWords as words } from '../src/words/sheets.ts';
import type { SheetView } from './bench-sheet.tsx';
import { alertSymbol } from './caution.tsx';
import type { Content, Markup } from './page.tsx';
import { scrolling } from './part.tsx';
import { isSaid, said, shows } from './place.ts';

/** The steps as rows with room for readings and times; what can hurt stands above the acts of its step. */
export function sheetMake({ line, steps }: SheetView): Markup {
  return (
    <section class="make">
      <h2>
        {words.make} <small>{words.makeSay}</small>
      </h2>
      {scrolling(
        words.make,
        <table class="steps">
          <thead>
            <tr>
              <td class="n-cell" />
              <th scope="col" colspan="2">
                {words.does}
              </th>
              <th scope="col" class="w-reading">
                {words.reading}
              </th>
              <th scope="col" class="w-clock">
                {words.start}
              </th>
              <th scope="col" class="w-clock">
                {words.end}
              </th>
              <th scope="col" class="w-by">
                {words.by}
              </th>
            </tr>
          </thead>
          {line.steps.map((step) => stepRows(step, steps[step.id]))}
        </table>,
      )}
    </section>
  );
}

function stepRows(step: ShownStep, prose: StepProse | undefined): Markup {
  return (
    <tbody>
      {headRow(step)}
      {step.cautions.map(cautionRow)}
      {dangerRow(step, prose)}
      <tr>
        <td class="tick-cell">
          <span class="box" />
        </td>
        <td class="acts" colspan="2">
          {[...(prose?.acts ?? [])]}
          {settings(step)}
          {rightWhen(prose)}
        </td>
        <td />
        <td />
        <td />
        <td />
      </tr>
      {waitRow(step)}
    </tbody>
  );
}

/** Number and name of the step, and what one run takes. */
function headRow(step: ShownStep): Markup {
  const { number, heading, runs } = step;
  return (
    <tr class="head-row">
      <th scope="rowgroup" class="n-cell" {...shows(number)} />
      <td colspan="6">
        <strong class="step-name" {...shows(heading)} />
        {isSaid(runs) ? <span class="runs" {...shows(runs)} /> : null}
        {takes(step)}
      </td>
    </tr>
  );
}

function cautionRow({ signal, word, hazard, avoid }: ShownCaution): Markup {
  return (
    <tr class={`caution-row signal-${signal}`}>
      <td class="tick-cell" />
      <td colspan="6">
        {signal === 'notice' ? null : alertSymbol()}
        <strong class="word" {...shows(word)} /> <span {...shows(hazard)} />
        {avoid.map((way) => (
          <span class="way" {...shows(way)} />
        ))}
      </td>
    </tr>
  );
}

/** Dangers of the products and what protects, above the acts. */
function dangerRow({ hazards, controls, limit, also }: ShownStep, prose: StepProse | undefined): Content {
  const sentences = [...hazards, ...controls, ...[limit, ...also].filter(isSaid)];
  const careful = prose?.careful ?? [];
  if (sentences.length + careful.length === 0) return null;
  return (
    <tr class="danger-row">
      <td class="tick-cell" />
      <td colspan="6">
        {[...careful]}
        {sentences.length > 0 ? (
          <ul>
            {sentences.map((sentence) => (
              <li {...shows(sentence)} />
            ))}
          </ul>
        ) : null}
      </td>
    </tr>
  );
}

function takes({ takes: all }: ShownStep): Content {
  if (all.length === 0) return null;
  return (
    <ul class="takes">
      {all.map(({ amount, unit, name }) => (
        <li>
          <b>
            <span {...shows(amount)} />
            {isSaid(unit) ? '\u00a0' : null}
            {isSaid(unit) ? <span {...shows(unit)} /> : null}
          </b>{' '}
          <span {...shows(name)} />
        </li>
      ))}
    </ul>
  );
}

/** Exact settings, each with a box to tick. */
function settings({ settings: all }: ShownStep): Content {
  if (all.length === 0) return null;
  return (
    <ul class="settings">
      {all.map(({ name, value }) => (
        <li>
          <span class="box" /> <b {...shows(value)} /> <span {...shows(name)} />
        </li>
      ))}
    </ul>
  );
}

function rightWhen(prose: StepProse | undefined): Content {
  const content = prose?.rightWhen ?? [];
  if (content.length === 0) return null;
  return (
    <div class="right-when">
      <b>{pageWords.guide.rightWhen}</b>
      {[...content]}
    </div>
  );
}

function waitRow({ times, notBefore }: ShownStep): Content {
  const wait = times.find(({ kind }) => kind === 'wait');
  if (!wait) return null;
  return (
    <tr class="wait-row">
      <td class="tick-cell" />
      <td colspan="2">
        <b>{said(words.wait, { time: wait.time.text })}</b>{' '}
        <span class="plan">{isSaid(notBefore) ? notBefore.text : pageWords.guide.wait}</span>
      </td>
      <td colspan="4" class="not-before">
        {words.notBefore}
        <span class="blank" />
      </td>
    </tr>
  );
}
