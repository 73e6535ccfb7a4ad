import type { ShownCheck } from '../src/showing/show-guide.ts';
import type { Shown } from '../src/showing/shown.ts';
import { sheetWords as words } from '../src/words/sheets.ts';
import type { BenchSheetView } from './bench-sheet.tsx';
import type { Content, Markup } from './page.tsx';
import { scrolling } from './part.tsx';
import { isSaid, shows } from './place.ts';
import { box } from './sheet-frame.tsx';

/** Checks of each model, one column a model; then those of runs and of the batch. */
export function sheetChecks({ guide: { checks }, models }: BenchSheetView): Markup {
  const ofModels = checks.filter(({ each }) => each === 'model');
  const others = checks.filter(({ each }) => each !== 'model');
  return (
    <section class="checks">
      <h2>
        {words.checks} <small>{words.checksSay}</small>
      </h2>
      {models.map((row) => modelTable(row, ofModels))}
      {otherChecks(others)}
    </section>
  );
}

function modelTable(models: readonly Shown[], checks: readonly ShownCheck[]): Markup {
  return scrolling(
    words.checks,
    <table class="models">
      <thead>
        <tr>
          <th scope="col">{words.model}</th>
          {models.map((model) => (
            <th scope="col" class="model" {...shows(model)} />
          ))}
        </tr>
      </thead>
      <tbody>
        {checks.map((check) => (
          <tr>
            {checkName(check)}
            {models.map(() => (
              <td class="model">{box()}</td>
            ))}
          </tr>
        ))}
        <tr>
          <th scope="row">{words.keep}</th>
          {models.map(() => (
            <td class="model">{box()}</td>
          ))}
        </tr>
      </tbody>
    </table>,
  );
}

function otherChecks(checks: readonly ShownCheck[]): Content {
  if (checks.length === 0) return null;
  return (
    <>
      <h3>{words.runChecks}</h3>
      {scrolling(
        words.runChecks,
        <table class="run-checks">
          <tbody>
            {checks.map((check) => (
              <tr>
                <td class="tick-cell">{box()}</td>
                {checkName(check)}
                <td class="of" {...shows(check.of)} />
                <td class="room" />
              </tr>
            ))}
          </tbody>
        </table>,
      )}
    </>
  );
}

function checkName({ what, target }: ShownCheck): Markup {
  return (
    <th scope="row">
      <span {...shows(what)} />
      {isSaid(target) ? ' ' : null}
      {isSaid(target) ? <b class="target" {...shows(target)} /> : null}
    </th>
  );
}
