import type { ShownLoad, ShownSchedule } from '../src/showing/shown-schedule.ts';
import { scheduleWords } from '../src/words/schedule.ts';
import type { Content, Markup } from './page.tsx';
import { scrolling } from './part.tsx';
import { isSaid, shows } from './place.ts';

const { chain, ready: readyWords, loads: loadWords } = scheduleWords;

/** What decides the end: the runs that follow from each other, and why none begins earlier. */
export function decides({ decides: links }: ShownSchedule): Content {
  if (links.length === 0) return null;
  return (
    <div class="decides">
      <h3>{chain.heading}</h3>
      <p class="says">{chain.says}</p>
      <ol>
        {links.map(({ when, what, because }) => (
          <li>
            <span class="clock" {...shows(when)} />
            <b {...shows(what)} />
            {isSaid(because) ? <span class="because" {...shows(because)} /> : null}
          </li>
        ))}
      </ol>
    </div>
  );
}

/** When each model is ready, where not all are at once. */
export function modelsReady({ models }: ShownSchedule): Content {
  if (models.length === 0) return null;
  const { columns } = readyWords;
  const until = models.some(({ useBy }) => isSaid(useBy));
  return (
    <div>
      <h3>{readyWords.heading}</h3>
      {scrolling(
        readyWords.heading,
        <table class="models-ready">
          <thead>
            <tr>
              <th scope="col">{columns.models}</th>
              <th scope="col">{columns.ready}</th>
              {until ? <th scope="col">{columns.useBy}</th> : null}
            </tr>
          </thead>
          <tbody>
            {models.map((row) => (
              <tr>
                <th scope="row" {...shows(row.models)} />
                <td {...shows(row.ready)} />
                {until ? <td {...shows(row.useBy)} /> : null}
              </tr>
            ))}
          </tbody>
        </table>,
      )}
    </div>
  );
}

/** How busy builders, places and tools are: one row each, so it waits until it is asked for. */
export function howBusy({ loads }: ShownSchedule): Content {
  if (loads.length === 0) return null;
  return (
    <details>
      <summary>
        <h3>{loadWords.heading}</h3>
      </summary>
      {scrolling(
        loadWords.heading,
        <table class="loads">
          <thead>
            <tr>
              <th scope="col">{loadWords.what}</th>
              <th scope="col" class="end">
                {loadWords.has}
              </th>
              <th scope="col" class="end">
                {loadWords.peak}
              </th>
              <th scope="col" class="end">
                {loadWords.busy}
              </th>
            </tr>
          </thead>
          <tbody>{loads.map(loadRow)}</tbody>
        </table>,
      )}
    </details>
  );
}

function loadRow({ name, has, peak, busy, isScarce }: ShownLoad): Markup {
  return (
    <tr class={isScarce ? 'is-scarce' : undefined}>
      <th scope="row" {...shows(name)} />
      <td class="end" {...shows(has)} />
      <td class="end peak" {...shows(peak)} />
      <td class="end" {...shows(busy)} />
    </tr>
  );
}
