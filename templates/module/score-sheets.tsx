import type { Root } from 'hast';
import type { ShownRating, ShownScoreSheet, ShownTeaching } from '../../src/showing/module/show-teaching.ts';
import { teachingWords } from '../../src/words/teaching.ts';
import { type ModuleSheetFacts, moduleSheet, onePage } from './module-sheet.tsx';
import type { Content, Markup } from '../page/markup.ts';
import { scrolling } from '../page/part.tsx';
import { isSaid, shows } from '../page/place.ts';
import { box } from '../sheets/sheet-frame.tsx';
import { tableHead } from '../page/table.tsx';

const { score: words } = teachingWords;

export interface ScoreSheetsView extends ModuleSheetFacts {
  readonly teaching: ShownTeaching;
}

/** One page for each station: what to look for, how it was done, how long it took. */
export function scoreSheets(view: ScoreSheetsView): Root {
  return moduleSheet(view, {
    id: 'score-sheets',
    defersWithin: true,
    main: (
      <>
        <h1 class="unseen">{teachingWords.sheets['score-sheets']}</h1>
        {view.teaching.scoreSheets.map((sheet) => scoreSheet(sheet, view))}
      </>
    ),
  });
}

function scoreSheet(sheet: ShownScoreSheet, view: ScoreSheetsView): Markup {
  return onePage(
    view,
    `${words.title}: ${sheet.name.text}`,
    [words.person, words.group, words.rater, words.date],
    <>
      <p class="how">{words.never}</p>
      {items(sheet)}
      {sheet.ratings.map(rating)}
      {times(sheet)}
      <section class="remarks-room">
        <h3>{words.remarks}</h3>
      </section>
    </>,
  );
}

function items({ items: all, total }: ShownScoreSheet): Content {
  if (all.length === 0) return null;
  const hasCritical = all.some(({ critical }) => isSaid(critical));
  return (
    <section>
      <table class="score">
        {tableHead(words.item, [words.yes, 'w-tick'], [words.no, 'w-tick'], [words.weight, 'w-tick'])}
        <tbody>
          {all.map(({ says, weight, critical }) => (
            <tr>
              <th scope="row">
                <span {...shows(says)} />
                {isSaid(critical) ? <b class="critical" {...shows(critical)} /> : null}
              </th>
              <td class="w-tick">{box()}</td>
              <td class="w-tick">{box()}</td>
              <td class="w-tick" {...shows(weight)} />
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colspan="3" {...shows(total)} />
            <td />
          </tr>
        </tfoot>
      </table>
      {hasCritical ? <p class="how">{words.criticalSays}</p> : null}
    </section>
  );
}

function rating({ says, anchors }: ShownRating): Markup {
  return (
    <section class="keep-together">
      <h3>
        <span {...shows(says)} /> <small>{words.ratingSays}</small>
      </h3>
      {scrolling(
        says.text,
        <table class="anchors">
          <thead>
            <tr>
              {anchors.map(({ point }) => (
                <th scope="col" {...shows(point)} />
              ))}
            </tr>
          </thead>
          <tbody>
            <tr>
              {anchors.map(({ says: anchor }) => (
                <td {...shows(anchor)} />
              ))}
            </tr>
          </tbody>
        </table>,
      )}
    </section>
  );
}

function times({ limit, penalties }: ShownScoreSheet): Content {
  if (!isSaid(limit) && penalties.length === 0) return null;
  return (
    <section class="keep-together">
      <h3>
        {words.times} {isSaid(limit) ? <small {...shows(limit)} /> : null}
      </h3>
      <table class="penalties">
        <tbody>
          <tr>
            <th scope="row">{words.taken}</th>
            <td class="room" />
          </tr>
          {penalties.map(({ when, adds }) => (
            <tr>
              <th scope="row">
                <span {...shows(when)} /> <small {...shows(adds)} />
              </th>
              <td class="room">{words.count}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {isSaid(limit) ? <p class="how">{words.formula}</p> : null}
    </section>
  );
}
