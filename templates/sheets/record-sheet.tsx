import type { Root } from 'hast';
import type { ShownReading, ShownRecord } from '../../src/showing/shown/shown-sheets.ts';
import type { Shown } from '../../src/showing/shown/shown.ts';
import { sheetWords } from '../../src/words/sheets.ts';
import type { Content, Markup } from '../page/markup.ts';
import { scrolling } from '../page/part.tsx';
import { blank, isSaid, rowsOf, shows } from '../page/place.ts';
import { cautionSection } from './sheet-cautions.tsx';
import { type SheetFacts, box, sheetDocument, sheetHead, spanOf, headingThatSays } from './sheet-frame.tsx';
import { emptyCells, emptyRows, tableHead } from '../page/table.tsx';

export interface RecordSheetView extends SheetFacts {
  readonly record: ShownRecord;
}

const { record: words } = sheetWords;

/**
 * What is filed of a batch: cautions, each model with its readings, lots, yield, changes, release. It says nothing of
 * how.
 */
export function recordSheet(view: RecordSheetView): Root {
  const { record } = view;
  return sheetDocument(view, {
    title: words.title,
    kind: 'record-sheet',
    main: (
      <>
        {sheetHead(view, {
          title: words.title,
          fields: [sheetWords.batchNumber, sheetWords.date, sheetWords.madeBy, sheetWords.checkedBy],
          more: approval(view),
          withCode: true,
        })}
        <p class="how">{words.say}</p>
        {cautionSection(view.line.cautions, view.plan.defers)}
        {models(record)}
        {otherChecks(view)}
        {lots(record)}
        {changes()}
        {yieldAndRelease(record)}
      </>
    ),
  });
}

function approval({ guide }: RecordSheetView): Content {
  return isSaid(guide.approval) ? <p class="approval" {...shows(guide.approval)} /> : null;
}

function models({ tables, models: numbers }: ShownRecord): Markup {
  return (
    <section>
      {headingThatSays(words.models, words.modelsSay)}
      {tables.map((readings, i) => modelTable(readings, numbers, i === tables.length - 1))}
    </section>
  );
}

/** What became of a model stands in the last table. */
function modelTable(readings: readonly ShownReading[], numbers: readonly Shown[], isLast: boolean): Markup {
  const row = (number: Shown): Markup => modelRow(number, readings, isLast);
  return scrolling(
    words.models,
    <table class="made">
      <thead>
        <tr>
          <th scope="col" class="w-number">
            {words.model}
          </th>
          <th scope="col" class="w-day">
            {words.madeOn}
          </th>
          <th scope="col" class="w-by">
            {words.by}
          </th>
          {readings.map(({ what, accept }) => (
            <th scope="col" class="w-value">
              <span {...shows(what)} />
              {spanOf(accept, 'accept')}
            </th>
          ))}
          {isLast ? (
            <>
              <th scope="col" class="w-keep">
                {words.keep}
              </th>
              <th scope="col">{words.failed}</th>
            </>
          ) : null}
        </tr>
      </thead>
      <tbody {...rowsOf('record.models', numbers, row, blank)} />
    </table>,
  );
}

function modelRow(number: Shown, readings: readonly ShownReading[], isLast: boolean): Markup {
  return (
    <tr>
      <th scope="row" class="number" {...shows(number)} />
      {emptyCells(2)}
      {readings.map(({ accept }) => (
        <td class="value">{isSaid(accept) ? null : box()}</td>
      ))}
      {isLast ? (
        <>
          <td class="value">{box()}</td>
          <td />
        </>
      ) : null}
    </tr>
  );
}

function otherChecks({ guide: { checks } }: RecordSheetView): Content {
  const others = checks.filter(({ each }) => each !== 'model');
  if (others.length === 0) return null;
  return (
    <section>
      <h2>{words.others}</h2>
      {scrolling(
        words.others,
        <table class="run-checks">
          {tableHead(
            words.check,
            [words.of, 'of'],
            [words.found, 'room'],
            [words.by, 'w-by'],
            [words.on, 'w-day'],
          )}
          <tbody>
            {others.map(({ what, target, of }) => (
              <tr>
                <th scope="row">
                  <span {...shows(what)} /> {isSaid(target) ? <b {...shows(target)} /> : null}
                </th>
                <td {...shows(of)} />
                {emptyCells(3)}
              </tr>
            ))}
          </tbody>
        </table>,
      )}
    </section>
  );
}

function lots({ lots: all }: ShownRecord): Content {
  if (all.length === 0) return null;
  return (
    <section>
      {headingThatSays(words.lots, words.lotsSay)}
      {scrolling(
        words.lots,
        <table class="lots">
          {tableHead(
            words.material,
            [words.lot, 'w-lot'],
            [words.useBy, 'w-day'],
            [words.supplier, 'w-lot'],
            [words.opened, 'w-day'],
          )}
          <tbody>
            {all.map(({ name, must, dangers }) => (
              <tr>
                <th scope="row">
                  <b {...shows(name)} />
                  {spanOf(must, 'must')}
                  {spanOf(dangers, 'dangers')}
                </th>
                {emptyCells(4)}
              </tr>
            ))}
          </tbody>
        </table>,
      )}
    </section>
  );
}

function changes(): Markup {
  return (
    <section class="keep-together">
      {headingThatSays(words.changes, words.changesSay)}
      {scrolling(
        words.changes,
        <table class="changes">
          {tableHead([words.ofModels, 'w-day'], words.what, [words.agreed, 'w-lot'])}
          <tbody>{emptyRows(3, 3)}</tbody>
        </table>,
      )}
    </section>
  );
}

function yieldAndRelease({ made }: ShownRecord): Markup {
  return (
    <section class="keep-together">
      <h2>{words.yields}</h2>
      <ul class="fields four">
        <li>
          {words.made} <small {...shows(made)} />
        </li>
        {[words.good, words.spoiled, words.used].map((field) => (
          <li>{field}</li>
        ))}
      </ul>
      {headingThatSays(words.release, words.releaseSay)}
      <ul class="fields sign">
        {[words.released, words.held, words.filed].map((field) => (
          <li>{field}</li>
        ))}
      </ul>
    </section>
  );
}
