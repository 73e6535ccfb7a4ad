import type { Element, ElementContent, Root } from 'hast';
import { h } from 'hastscript';
import type { StepProse } from '../../src/rendering/step-prose.ts';
import type { ShownGuide } from '../../src/showing/library/show-guide.ts';
import type { ShownLine, ShownPlan } from '../../src/showing/shown/shown.ts';
import type { ShownCurve } from '../../src/showing/shown/shown-what-if.ts';
import { pageWords } from '../../src/words/pages.ts';
import { benchBar } from './bench.tsx';
import { guideCareful } from './guide-careful.tsx';
import { guideChecks } from './guide-checks.tsx';
import { guideCosts } from './guide-costs.tsx';
import { guideCutting } from './guide-cutting.tsx';
import { type GuideData, guideData } from './guide-data.tsx';
import { guideHero } from './guide-hero.tsx';
import { guideInUse } from './guide-in-use.tsx';
import { guideMaterials } from './guide-materials.tsx';
import { type PlannerView, guidePlanner } from './guide-planner.tsx';
import { guideRecord } from './guide-record.tsx';
import { guideSchedule } from './guide-schedule.tsx';
import { guideStep } from './guide-step.tsx';
import type { Link } from '../page/lists.tsx';
import { type Content, type Markup, type Site, page } from '../page/page.tsx';
import { part } from '../page/part.tsx';
import { type PagePart, partsThere } from '../page/ways.tsx';

/** One guide at one level, ready to be placed. */
export interface GuideView {
  readonly site: Site;
  readonly root: string;
  readonly guide: ShownGuide;
  readonly plan: ShownPlan;
  readonly line: ShownLine;
  /** "4 models" */
  readonly batch: string;
  /** All levels with the way to their pages; empty where the guide has one. */
  readonly levels: readonly (Link & { readonly id: string })[];
  /** What stands before the first step. */
  readonly before: readonly ProseSection[];
  readonly steps: Readonly<Record<string, StepProse>>;
  /** Free sections below the steps. */
  readonly after: readonly ProseSection[];
  /** Pictures of checks, by file. */
  readonly pictures: Readonly<Record<string, Element>>;
  readonly sheetHref: string;
  /** Everything that is made to be printed, that sheet first. */
  readonly sheets?: readonly Link[];
  /** The cutting plan to print; absent where nothing is cut. */
  readonly cutHref?: string;
  /** What the reader may set; absent where there is no plan to follow it. */
  readonly planner?: PlannerView;
  /** What other sizes of the batch cost. */
  readonly curve?: ShownCurve;
  /** Files for other programs, and the guide as JSON-LD. */
  readonly data?: GuideData;
}

export interface ProseSection {
  readonly id: string;
  /** Empty for what stands before any heading. */
  readonly heading: string;
  readonly content: readonly ElementContent[];
}

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
    ...view.after.map(
      ({ id, heading, content }) => [id, heading, part(id, heading, prose(content))] as const,
    ),
    ['record', words.record, guideRecord(view.guide)],
  ]);
}

/** What stands before the steps: the opening without a heading, then free sections. */
function aboutPart({ before }: GuideView): Content {
  if (before.length === 0) return null;
  const content = before.flatMap(({ id, heading, content }) =>
    heading === '' ? content : [subheading(id, heading), ...content],
  );
  return part('about', pageWords.guide.about, prose(content));
}

function subheading(id: string, heading: string): ElementContent {
  return h('h3', { id }, heading);
}

function prose(content: readonly ElementContent[]): Markup {
  return <div class="prose">{[...content]}</div>;
}

function buildPart(view: GuideView): Content {
  const { line, guide, steps, plan } = view;
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
    </section>
  );
}
