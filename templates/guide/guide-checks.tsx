import type { Element } from 'hast';
import type { ShownCheck } from '../../src/showing/library/show-guide.ts';
import { pageWords } from '../../src/words/pages.ts';
import type { GuideView } from './guide-view.ts';
import type { Content, Markup } from '../page/markup.ts';
import { part } from '../page/part.tsx';
import { isSaid, shows } from '../page/place.ts';

const { guide: words } = pageWords;

/** What makes one model as good as the next. */
export function guideChecks({ guide: { checks }, pictures }: GuideView): Content {
  if (checks.length === 0) return null;
  const content = <ul class="checks">{checks.map((check) => checkItem(check, pictures))}</ul>;
  return part('checks', words.checks, content, <p>{words.checksSay}</p>);
}

function checkItem(check: ShownCheck, pictures: Readonly<Record<string, Element>>): Markup {
  const { id, what, target, after, of, ifNot } = check;
  return (
    <li id={`check-${id}`}>
      <div class="check-what">
        <p class="check-head">
          <strong {...shows(what)} />
          {isSaid(target) ? <b class="target" {...shows(target)} /> : null}
        </p>
        <dl>
          <dt>{words.of}</dt>
          <dd {...shows(of)} />
          {after ? <dt>{words.after}</dt> : null}
          {after ? (
            <dd>
              <a href={`#step-${after.step}`} {...shows(after.heading)} />
            </dd>
          ) : null}
          <dt>{words.ifNot}</dt>
          <dd {...shows(ifNot)} />
        </dl>
      </div>
      {picturesOf(check, pictures)}
    </li>
  );
}

function picturesOf({ like, unlike }: ShownCheck, pictures: Readonly<Record<string, Element>>): Content {
  const shown = [
    { name: words.like, kind: 'like', picture: pictures[like ?? ''] },
    { name: words.unlike, kind: 'unlike', picture: pictures[unlike ?? ''] },
  ].filter(({ picture }) => picture !== undefined);
  if (shown.length === 0) return null;
  return (
    <div class="check-pictures">
      {shown.map(({ name, kind, picture }) => (
        <figure class={kind}>
          {picture}
          <figcaption>{name}</figcaption>
        </figure>
      ))}
    </div>
  );
}
