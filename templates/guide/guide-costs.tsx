import type { ShownCost } from '../../src/showing/shown/shown-plan.ts';
import { pageWords } from '../../src/words/pages.ts';
import { guideCurve } from './guide-curve.tsx';
import type { GuideView } from './guide-view.ts';
import type { Markup } from '../page/markup.ts';
import { part } from '../page/part.tsx';
import { blanks, rowsOf, shows } from '../page/place.ts';

/** The six costs, each with what it counts; then what other sizes of the batch cost. */
export function guideCosts({ plan, curve }: GuideView): Markup {
  const content = (
    <div class="stack">
      <dl class="costs">{plan.costs.map(costItem)}</dl>
      {guideCurve(curve)}
    </div>
  );
  return part('costs', pageWords.guide.costs, content, <p>{pageWords.guide.costsSay}</p>);
}

/** A plan of several guides or levels has a sum for each, with its name. */
function costItem({ id, name, means, each }: ShownCost): Markup {
  const key = `costs.${id}.each`;
  return (
    <div>
      <dt {...shows(name)} />
      <dd class="cost" {...rowsOf(key, each, costOf, blanks('of', 'sum'))} />
      <dd class="means" {...shows(means)} />
    </div>
  );
}

function costOf({ of, sum }: ShownCost['each'][number]): Markup {
  return (
    <div>
      <span {...shows(sum)} />
      <small {...shows(of)} />
    </div>
  );
}
