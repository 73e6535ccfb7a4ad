import { pageWords } from '../src/words/pages.ts';
import { guideCurve } from './guide-curve.tsx';
import type { GuideView } from './guide-page.tsx';
import type { Markup } from './page.tsx';
import { part } from './part.tsx';
import { shows } from './place.ts';

/** The six costs, each with what it counts; then what other sizes of the batch cost. */
export function guideCosts({ plan, curve }: GuideView): Markup {
  const content = (
    <div class="stack">
      <dl class="costs">
        {plan.costs.map(({ name, means, each }) => (
          <div>
            <dt {...shows(name)} />
            <dd class="cost">
              {each.map((value) => (
                <span {...shows(value)} />
              ))}
            </dd>
            <dd class="means" {...shows(means)} />
          </div>
        ))}
      </dl>
      {guideCurve(curve)}
    </div>
  );
  return part('costs', pageWords.guide.costs, content, <p>{pageWords.guide.costsSay}</p>);
}
