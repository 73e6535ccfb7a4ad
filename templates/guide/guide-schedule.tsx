import { drawn } from '../../src/rendering/drawn.ts';
import { hatching } from '../../src/showing/figures/schedule-strip.ts';
import type { ShownSchedule } from '../../src/showing/shown/shown-schedule.ts';
import { pageWords } from '../../src/words/pages.ts';
import { whatIfWords } from '../../src/words/what-if.ts';
import { decides, howBusy, modelsReady } from './guide-decides.tsx';
import type { GuideView } from './guide-view.ts';
import type { Markup } from '../page/markup.ts';
import { part, scrolling } from '../page/part.tsx';
import { blank, blanks, draws, isSaid, rowsOf, shows, where } from '../page/place.ts';
import { tableHead } from '../page/table.tsx';

const { guide: words } = pageWords;

/** Who does what when: a picture, and a table that says the same; or why there is no schedule. */
export function guideSchedule({ plan: { schedule } }: Pick<GuideView, 'plan'>): Markup {
  const content = (
    <>
      {noSchedule(schedule)}
      <div class="stack" {...where('schedule.days', schedule.days.length > 0)}>
        {draws('schedule-strip', 'schedule.strip', schedule.strip)}
        {dayTable(schedule)}
        {decides(schedule)}
        {modelsReady(schedule)}
        {howBusy(schedule)}
      </div>
      {drawn(hatching)}
    </>
  );
  return part('when', words.when, content, remarks(schedule));
}

/** Why there is none, and what would help. */
function noSchedule({ none, helps }: ShownSchedule): Markup {
  return (
    <div {...where('schedule.none', isSaid(none))}>
      <p {...shows(none)} />
      <div {...where('schedule.helps', helps.length > 0)}>
        <h3>{whatIfWords.helps.heading}</h3>
        <ul {...rowsOf('schedule.helps', helps, (help) => <li {...shows(help)} />, blank)} />
      </div>
    </div>
  );
}

/** For how many it is, when all are ready, and whether a shorter way may exist. */
function remarks({ says, backwards, ready, bound }: ShownSchedule): Markup {
  return (
    <>
      <p {...shows(says)} />
      <p {...shows(backwards)} />
      <div {...rowsOf('schedule.ready', ready, allReady, blanks('of', 'says'))} />
      <p {...shows(bound)} />
    </>
  );
}

function allReady({ of, says }: ShownSchedule['ready'][number]): Markup {
  return (
    <p>
      <b class="of" {...shows(of)} />
      <span {...shows(says)} />
    </p>
  );
}

type Day = ShownSchedule['days'][number];
type DayRow = Day['rows'][number];

function dayTable({ days }: ShownSchedule): Markup {
  const { dataRows, children } = rowsOf('schedule.days', days, dayRows, blankDay);
  return scrolling(
    words.when,
    <table class="days" data-rows={dataRows}>
      {tableHead(words.from, words.to, words.does, words.who)}
      {children}
    </table>,
  );
}

function dayRows({ day, rows }: Day, key: string): Markup {
  const list = rowsOf(`${key}.rows`, rows, dayRow, (at): DayRow => ({
    line: 0,
    ...blanks('from', 'to', 'who', 'of', 'what', 'then')(at),
  }));
  return (
    <tbody data-rows={list.dataRows}>
      <tr class="day">
        <th scope="rowgroup" colspan="4" {...shows(day)} />
      </tr>
      {list.children}
    </tbody>
  );
}

function blankDay(key: string): Day {
  return { ...blanks('day')(key), rows: [] };
}

function dayRow({ from, to, of, what, who, then }: DayRow): Markup {
  return (
    <tr>
      <td class="clock" {...shows(from)} />
      <td class="clock" {...shows(to)} />
      <td class="what">
        <span {...shows(what)} />
        <span class="of" {...shows(of)} />
        <span class="then" {...shows(then)} />
      </td>
      <td class="who" {...shows(who)} />
    </tr>
  );
}
