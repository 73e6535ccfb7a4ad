import { pageWords } from '../src/words/pages.ts';
import type { GuideView } from './guide-page.tsx';
import type { Markup } from './page.tsx';
import { part } from './part.tsx';
import { isSaid, shows } from './place.ts';

const { guide: words } = pageWords;

/** Where the guide comes from: status, version, licence, what changed, sources. */
export function guideRecord({ guide }: GuideView): Markup {
  const content = (
    <div class="side-by-side">
      <div>
        <dl class="record">
          <dt>{words.status}</dt>
          <dd>{isSaid(guide.approval) ? guide.approval.text : words.statuses[guide.status]}</dd>
          {isSaid(guide.number) ? <dt>{words.version}</dt> : null}
          {isSaid(guide.number) ? <dd {...shows(guide.number)} /> : null}
          {isSaid(guide.licence) ? <dt>{words.licence}</dt> : null}
          {isSaid(guide.licence) ? <dd {...shows(guide.licence)} /> : null}
        </dl>
        {guide.sources.length > 0 ? <h3>{words.sources}</h3> : null}
        {guide.sources.length > 0 ? (
          <ul class="sources">
            {guide.sources.map((source) => (
              <li {...shows(source)} />
            ))}
          </ul>
        ) : null}
      </div>
      {guide.history.length > 0 ? history(guide.history) : null}
    </div>
  );
  return part('record', words.record, content);
}

function history(entries: GuideView['guide']['history']): Markup {
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
