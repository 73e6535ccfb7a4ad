import type { ElementContent, Root } from 'hast';
import { h } from 'hastscript';
import { pageWords } from '../../src/words/pages.ts';
import { benchBar } from './bench.tsx';
import { guideCareful } from './guide-careful.tsx';
import { guideChecks } from './guide-checks.tsx';
import { guideCosts } from './guide-costs.tsx';
import { guideCutting } from './guide-cutting.tsx';
import { guideData, howTo } from './guide-data.tsx';
import { guideHero } from './guide-hero.tsx';
import { guideInUse } from './guide-in-use.tsx';
import { guideMaterials } from './guide-materials.tsx';
import { guidePlanner } from './guide-planner.tsx';
import { guideRecord } from './guide-record.tsx';
import { guideSchedule } from './guide-schedule.tsx';
import { guideStep } from './guide-step.tsx';
import type { GuideView } from './guide-view.ts';
import type { Content } from '../page/markup.ts';
import { page } from '../page/page.tsx';
import { part } from '../page/part.tsx';
import { proseBlock, proseParts } from '../page/prose-section.tsx';
import { type PagePart, partsThere } from '../page/ways.tsx';

/**
 * The page of a guide: what can hurt comes first, then what is needed, when it happens, how it is cut and built, and
 * how the model lives.
 */
export function guidePage(view: GuideView): Root {
  const { site, root, guide, line } = view;
  const parts = partsOf(view);
  return page({
    site,
    root,
    title: line.title.text,
    description: guide.summary.text || guide.trains.text || line.title.text,
    current: 'guides',
    isDraft: guide.status === 'draft',
    scripts: ['planner.js', 'bench.js'],
    hero: guideHero(view, parts),
    bar: view.planner ? guidePlanner(view.planner) : null,
    main: (
      <>
        {parts.map(({ markup }) => markup)}
        {view.data ? guideData(view.data) : null}
      </>
    ),
    of: [guide.title.text, guide.version.text].filter((text) => text !== '').join(', '),
  });
}

function partsOf(view: GuideView): readonly PagePart[] {
  const { guide: words } = pageWords;
  return partsThere([
    ['careful', words.careful, guideCareful(view)],
    ['about', words.about, aboutPart(view)],
    ['materials', words.materials, guideMaterials(view)],
    ['when', words.when, guideSchedule(view)],
    ['cutting', words.cutting, guideCutting(view)],
    ['build', words.build, buildPart(view)],
    ['checks', words.checks, guideChecks(view)],
    ['in-use', words.inUse, guideInUse(view)],
    ['costs', words.costs, guideCosts(view)],
    ...proseParts(view.after),
    ['record', words.record, guideRecord(view.guide)],
  ]);
}

/** What stands before the steps: the opening without a heading, then free sections. */
function aboutPart({ before }: GuideView): Content {
  if (before.length === 0) return null;
  const content = before.flatMap(({ id, heading, content }) =>
    heading === '' ? content : [subheading(id, heading), ...content],
  );
  return part('about', pageWords.guide.about, proseBlock(content));
}

function subheading(id: string, heading: string): ElementContent {
  return h('h3', { id }, heading);
}

function buildPart(view: GuideView): Content {
  const { line, guide, steps, plan, data } = view;
  if (line.steps.length === 0) return null;
  return (
    <section id="build" class="build" aria-labelledby="build-head">
      <h2 id="build-head">{pageWords.guide.build}</h2>
      {benchBar(view)}
      <ol class="steps">
        {line.steps.map((step) =>
          guideStep(
            step,
            steps[step.id],
            guide.checks.filter(({ after }) => after?.step === step.id),
            plan.defersAtStep,
          ),
        )}
      </ol>
      {data ? howTo(data) : null}
    </section>
  );
}
