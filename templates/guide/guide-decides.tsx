import type {
  ShownLink,
  ShownLoad,
  ShownReady,
  ShownSchedule,
} from '../../src/showing/shown/shown-schedule.ts';
import { scheduleWords } from '../../src/words/schedule.ts';
import type { Markup } from '../page/markup.ts';
import { scrolling } from '../page/part.tsx';
import { blanks, isSaid, rowsOf, shows, where } from '../page/place.ts';
import { tableHead } from '../page/table.tsx';

const { chain, ready: readyWords, loads: loadWords } = scheduleWords;

/** What decides the end: the runs that follow from each other, and why none begins earlier. */
export function decides({ decides: links }: ShownSchedule): Markup {
  const key = 'schedule.decides';
  return (
    <div class="decides" {...where(key, links.length > 0)}>
      <h3>{chain.heading}</h3>
      <p class="says">{chain.says}</p>
      <ol {...rowsOf(key, links, link, blanks('when', 'what', 'of', 'because'))} />
    </div>
  );
}

function link({ when, what, of, because }: ShownLink): Markup {
  return (
    <li>
      <span class="clock" {...shows(when)} />
      <span class="what">
        <b {...shows(what)} />
        <span class="of" {...shows(of)} />
      </span>
      <span class="because" {...shows(because)} />
    </li>
  );
}

/** When each model is ready, where not all are at once. */
export function modelsReady({ models }: ShownSchedule): Markup {
  const { columns } = readyWords;
  const key = 'schedule.models';
  const until = models.some(({ useBy }) => isSaid(useBy));
  return (
    <div {...where(key, models.length > 0)}>
      <h3>{readyWords.heading}</h3>
      {scrolling(
        readyWords.heading,
        <table class="models-ready">
          <thead>
            <tr>
              <th scope="col">{columns.models}</th>
              <th scope="col">{columns.ready}</th>
              <th scope="col" {...where(`${key}[].useBy`, until)}>
                {columns.useBy}
              </th>
            </tr>
          </thead>
          <tbody {...rowsOf(key, models, readyRow, blankReady)} />
        </table>,
      )}
    </div>
  );
}

function readyRow({ models, ready, useBy }: ShownReady): Markup {
  return (
    <tr>
      <th scope="row" {...shows(models)} />
      <td {...shows(ready)} />
      <td {...shows(useBy)} />
    </tr>
  );
}

function blankReady(key: string): ShownReady {
  return { line: 0, ...blanks('models', 'ready', 'useBy')(key) };
}

/** How busy builders, places and tools are: one row each, so it waits until it is asked for. */
export function howBusy({ loads }: ShownSchedule): Markup {
  const key = 'schedule.loads';
  return (
    <details {...where(key, loads.length > 0)}>
      <summary>
        <h3>{loadWords.heading}</h3>
      </summary>
      {scrolling(
        loadWords.heading,
        <table class="loads">
          {tableHead(
            loadWords.what,
            [loadWords.has, 'end'],
            [loadWords.peak, 'end'],
            [loadWords.busy, 'end'],
          )}
          <tbody {...rowsOf(key, loads, loadRow, blankLoad)} />
        </table>,
      )}
    </details>
  );
}

function loadRow({ name, has, peak, busy, isScarce }: ShownLoad): Markup {
  return (
    <tr data-scarce={String(isScarce)}>
      <th scope="row" {...shows(name)} />
      <td class="end" {...shows(has)} />
      <td class="end peak" {...shows(peak)} />
      <td class="end" {...shows(busy)} />
    </tr>
  );
}

function blankLoad(key: string): ShownLoad {
  const isScarce = '{isScarce}' as unknown as boolean;
  return { kind: 'tool', isScarce, ...blanks('name', 'has', 'peak', 'busy')(key) };
}
