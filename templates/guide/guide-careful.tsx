import type { ShownPlan } from '../../src/showing/shown/shown-plan.ts';
import { pageWords } from '../../src/words/pages.ts';
import { cautionPanel } from '../page/caution.tsx';
import type { GuideView } from './guide-view.ts';
import type { Markup } from '../page/markup.ts';
import { part } from '../page/part.tsx';
import { policyNote } from '../page/policy-note.tsx';
import { blanks, rowsOf, shows, where } from '../page/place.ts';

/** All cautions, most severe first, and what comes before the guide; beside them the tools to have ready. */
export function guideCareful(view: GuideView): Markup {
  const { line, plan, guide } = view;
  const content = (
    <div class="side-by-side">
      <div>
        {line.cautions.length > 0 ? (
          <ul class="cautions">
            {line.cautions.map((caution) =>
              cautionPanel(
                caution,
                `caution-${caution.id}`,
                undefined,
                where(`lines[0].cautions.${caution.id}`, true),
              ),
            )}
          </ul>
        ) : (
          <p>{pageWords.guide.noCautions}</p>
        )}
        <p class="defers" {...shows(plan.defers)} />
        {policyNote(view.site)}
        <p class="electrosurgery" {...shows(guide.electrosurgery)} />
      </div>
      {toolsReady(view)}
    </div>
  );
  return part('careful', pageWords.guide.careful, content);
}

type Tool = ShownPlan['tools'][number];

function toolsReady({ plan, root }: GuideView): Markup {
  const row = (tool: Tool): Markup => toolRow(tool, root);
  return (
    <div class="ready">
      <h3>{pageWords.guide.prepare}</h3>
      <ul class="kit" {...rowsOf('tools', plan.tools, row, blankTool)} />
    </div>
  );
}

function toolRow({ id, name, dangers, need, owned }: Tool, root: string): Markup {
  return (
    <li>
      <span>
        <a href={`${root}tools/index.html#tool-${id}`} {...shows(name)} />
        <span class="dangers" {...shows(dangers)} />
      </span>
      <span class="need">
        <span {...shows(need)} />
        <span class="owned" {...shows(owned)} />
      </span>
    </li>
  );
}

function blankTool(key: string): Tool {
  return { id: '{id}', ...blanks('name', 'dangers', 'need', 'owned')(key) };
}
