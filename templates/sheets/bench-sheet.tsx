import type { Root } from 'hast';
import { sheetWords } from '../../src/words/sheets.ts';
import { benchBar } from '../guide/bench.tsx';
import type { BenchSheetView } from './bench-view.ts';
import type { Markup } from '../page/markup.ts';
import { blanks, isSaid, rowsOf, said, shows, where } from '../page/place.ts';
import { sheetCautions } from './sheet-cautions.tsx';
import { box, sheetDocument, sheetHead } from './sheet-frame.tsx';
import { sheetMake } from './sheet-make.tsx';
import { sheetRecord } from './sheet-record.tsx';
import { sheetWeigh } from './sheet-weigh.tsx';

/**
 * The bench sheet. Its front is what is recorded: which batch, what was read before, what was measured out, what was
 * done otherwise, who hands over. Its back is the work: steps with room for readings and times, then the checks. No
 * prices; release stands on the batch record.
 */
export function benchSheet(view: BenchSheetView): Root {
  return sheetDocument(view, {
    title: sheetWords.title,
    kind: 'bench-sheet',
    controls: benchBar(view),
    main: (
      <>
        {sheetHead(view, {
          title: sheetWords.title,
          fields: [sheetWords.batchNumber, sheetWords.date, sheetWords.madeBy, sheetWords.checkedBy],
          more: factsOf(view),
          withCode: true,
        })}
        {sheetCautions(view)}
        {clearTheBench(view)}
        {sheetWeigh(view)}
        {sheetRecord(view)}
        {sheetMake(view)}
      </>
    ),
  });
}

function factsOf({ plan, line }: BenchSheetView): Markup {
  const facts = [...plan.facts, ...line.facts].filter(({ id }) =>
    ['hands-on', 'build-time', 'keeps'].includes(id),
  );
  return (
    <dl class="facts">
      {facts.map(({ name, value }) => (
        <div {...where(value.key, true)}>
          <dt {...shows(name)} />
          <dd {...shows(value)} />
        </div>
      ))}
    </dl>
  );
}

function clearTheBench({ guide, plan }: BenchSheetView): Markup {
  const ticks: readonly string[] = [
    ...sheetWords.clearTicks,
    ...(isSaid(guide.version) ? [said(sheetWords.sheetIs, { version: guide.version.text })] : []),
  ];
  return (
    <section class="clear">
      <h2>{sheetWords.clear}</h2>
      <ul class="ticks">
        {ticks.map((tick) => (
          <li>
            {box()} {tick}
          </li>
        ))}
      </ul>
      <h2>{sheetWords.haveReady}</h2>
      <ul class="ticks" {...rowsOf('tools', plan.tools, toolTick, blankTool)} />
    </section>
  );
}

type Tool = BenchSheetView['plan']['tools'][number];

function toolTick({ name, need }: Pick<Tool, 'name' | 'need'>): Markup {
  return (
    <li>
      {box()}{' '}
      <span>
        <span {...shows(name)} />, <span {...shows(need)} />
      </span>
    </li>
  );
}

const blankTool = blanks('name', 'need');
