import { hatching, stripKey, stripRow, stripScale } from '../src/rendering/schedule-strip.ts';
import type { ShownLine } from '../src/showing/shown.ts';
import type { ShownSchedule } from '../src/showing/shown-schedule.ts';
import { pageWords } from '../src/words/pages.ts';
import { scheduleWords } from '../src/words/schedule.ts';
import { whatIfWords } from '../src/words/what-if.ts';
import { decides, howBusy, modelsReady } from './guide-decides.tsx';
import type { GuideView } from './guide-page.tsx';
import type { Markup } from './page.tsx';
import { part, scrolling } from './part.tsx';
import { isSaid, shows } from './place.ts';

const { guide: words } = pageWords;

/** Who does what when: a picture, and a table that says the same; or why there is no schedule. */
export function guideSchedule({ plan: { schedule }, line }: GuideView): Markup {
  if (isSaid(schedule.none)) return part('when', words.when, noSchedule(schedule));
  const content = (
    <div class="stack">
      {strip(schedule, line)}
      {dayTable(schedule)}
      {decides(schedule)}
      {modelsReady(schedule)}
      {howBusy(schedule)}
    </div>
  );
  return part('when', words.when, content, remarks(schedule));
}

/** Why there is none, and what would help. */
function noSchedule({ none, helps }: ShownSchedule): Markup {
  return (
    <>
      <p {...shows(none)} />
      {helps.length > 0 ? (
        <>
          <h3>{whatIfWords.helps.heading}</h3>
          <ul>
            {helps.map((help) => (
              <li {...shows(help)} />
            ))}
          </ul>
        </>
      ) : null}
    </>
  );
}

/** For how many it is, when all are ready, and whether a shorter way may exist. */
function remarks({ says, backwards, ready, bound }: ShownSchedule): Markup {
  return (
    <>
      {[says, backwards, ...ready, bound].filter(isSaid).map((sentence) => (
        <p {...shows(sentence)} />
      ))}
    </>
  );
}

const keys = [
  ['hands-on', words.handsOn],
  ['wait', words.wait],
  ['closed', words.closed],
  ['decides', scheduleWords.chain.heading],
] as const;

/** The picture: one row a step. The table below says the same, so it is hidden from readers that speak. */
function strip({ strip: { rows, closed, ticks } }: ShownSchedule, { steps }: ShownLine): Markup {
  return (
    <div class="strip" aria-hidden="true">
      {hatching()}
      <p class="key">
        {keys.map(([kind, name]) => (
          <span>
            {stripKey(kind)}
            {name}
          </span>
        ))}
      </p>
      {rows.map(({ label, bars, step, decides: deciding }) => (
        <div class="strip-row">
          <span class="strip-label">
            {steps
              .filter(({ id }) => id === step)
              .map(({ number }) => (
                <b {...shows(number)} />
              ))}
            <span {...shows(label)} />
          </span>
          {stripRow(bars, closed, ticks, deciding)}
        </div>
      ))}
      <div class="strip-row">{stripScale(ticks)}</div>
    </div>
  );
}

function dayTable({ days }: ShownSchedule): Markup {
  return scrolling(
    words.when,
    <table class="days">
      <thead>
        <tr>
          <th scope="col">{words.from}</th>
          <th scope="col">{words.to}</th>
          <th scope="col">{words.does}</th>
          <th scope="col">{words.who}</th>
        </tr>
      </thead>
      {days.map(({ day, rows }) => (
        <tbody>
          <tr class="day">
            <th scope="rowgroup" colspan="4" {...shows(day)} />
          </tr>
          {rows.map((row) => dayRow(row))}
        </tbody>
      ))}
    </table>,
  );
}

function dayRow({ from, to, what, who, then }: ShownSchedule['days'][number]['rows'][number]): Markup {
  return (
    <tr>
      <td class="clock" {...shows(from)} />
      <td class="clock" {...shows(to)} />
      <td class="what">
        <span {...shows(what)} />
        {isSaid(then) ? <span class="then" {...shows(then)} /> : null}
      </td>
      <td class="who" {...shows(who)} />
    </tr>
  );
}
