import { sheetWords as words } from '../../src/words/sheets.ts';
import type { BenchSheetView } from './bench-view.ts';
import type { Markup } from '../page/markup.ts';
import { scrolling } from '../page/part.tsx';
import { shows } from '../page/place.ts';
import { emptyRows, tableHead } from '../page/table.tsx';
import { headingThatSays } from './sheet-frame.tsx';

/** What was done otherwise than printed, and beside it who made it. What came of it stands on the batch record. */
export function sheetRecord(view: BenchSheetView): Markup {
  return (
    <section class="record">
      <div>{changes()}</div>
      <div>{handOver(view)}</div>
    </section>
  );
}

function changes(): Markup {
  return (
    <>
      {headingThatSays(words.changes, words.changesSay)}
      {scrolling(
        words.changes,
        <table class="changes">
          {tableHead([words.step, 'w-step'], words.happened, words.did, [words.initials, 'w-initials'])}
          <tbody>{emptyRows(2, 4)}</tbody>
        </table>,
      )}
    </>
  );
}

function handOver({ line }: BenchSheetView): Markup {
  const [before, after] = words.of.split('{batch}');
  return (
    <>
      {headingThatSays(words.signOff, words.signOffSay)}
      <ul class="fields sign">
        <li>
          {words.kept} <span class="blank" /> {words.rejected} <span class="blank" /> {before}
          <span {...shows(line.models)} />
          {after}
        </li>
        <li>{words.maker}</li>
        <li>{words.checker}</li>
      </ul>
    </>
  );
}
