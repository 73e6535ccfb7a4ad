import type { ShownOrigin } from '../../src/showing/library/show-origin.ts';
import { pageWords } from '../../src/words/pages.ts';
import { textList } from '../page/lists.tsx';
import type { Content, Markup } from '../page/markup.ts';
import { part } from '../page/part.tsx';
import { isSaid, shows } from '../page/place.ts';

const { guide: words } = pageWords;

/** A guide or a module as far as its record goes. */
export interface Recorded extends ShownOrigin {
  readonly status: keyof typeof words.statuses;
}

/** Where a guide comes from: status, version, licence, what changed, sources. */
export function guideRecord(guide: Recorded): Markup {
  return part('record', words.record, recordOf(guide));
}

/** @param more  Further rows of its list, with what they are called. */
export function recordOf(
  { status, approval, number, licence, sources, history }: Recorded,
  more: Content = null,
): Markup {
  return (
    <div class="side-by-side">
      <div>
        <dl class="record">
          {more}
          <dt>{words.status}</dt>
          <dd>{isSaid(approval) ? approval.text : words.statuses[status]}</dd>
          {isSaid(number) ? <dt>{words.version}</dt> : null}
          {isSaid(number) ? <dd {...shows(number)} /> : null}
          {isSaid(licence) ? <dt>{words.licence}</dt> : null}
          {isSaid(licence) ? <dd {...shows(licence)} /> : null}
        </dl>
        {sources.length > 0 ? <h3>{words.sources}</h3> : null}
        {textList(sources, 'sources')}
      </div>
      {history.length > 0 ? historyOf(history) : null}
    </div>
  );
}

function historyOf(entries: Recorded['history']): Markup {
  return (
    <div>
      <h3>{words.history}</h3>
      <ol class="history">
        {entries.map(({ version, on, what }) => (
          <li>
            <strong {...shows(version)} />
            {isSaid(on) ? <span class="on" {...shows(on)} /> : null}
            <span {...shows(what)} />
          </li>
        ))}
      </ol>
    </div>
  );
}
