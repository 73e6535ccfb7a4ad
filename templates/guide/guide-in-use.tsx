import type { ShownCare } from '../../src/showing/library/show-in-use.ts';
import { pageWords } from '../../src/words/pages.ts';
import type { GuideView } from './guide-view.ts';
import type { Content, Markup } from '../page/markup.ts';
import { part } from '../page/part.tsx';
import { isSaid, shows, where } from '../page/place.ts';

/** The life of a model after the build, and how long it keeps and lasts. */
export function guideInUse({ guide: { inUse }, line }: GuideView): Content {
  const facts = line.facts.filter(({ id }) => id === 'keeps' || id === 'lasts');
  if (inUse.length + facts.length === 0) return null;
  const content = (
    <dl class="care">
      {facts.map(({ id, name, value }) => (
        <div {...where(`lines[0].facts.${id}`, true)}>
          <dt {...shows(name)} />
          <dd>
            <p {...shows(value)} />
          </dd>
        </div>
      ))}
      {inUse.map(careRow)}
    </dl>
  );
  return part('in-use', pageWords.guide.inUse, content);
}

/** One thing to do in the life of a model: when, how long it takes, what it is. */
export function careRow({ name, takes, says }: ShownCare): Markup {
  return (
    <div>
      <dt>
        <span {...shows(name)} />
        {isSaid(takes) ? <span class="takes" {...shows(takes)} /> : null}
      </dt>
      <dd>
        {says.map((text) => (
          <p {...shows(text)} />
        ))}
      </dd>
    </div>
  );
}
