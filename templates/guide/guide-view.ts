import type { Element } from 'hast';
import type { StepProse } from '../../src/rendering/step-prose.ts';
import type { ShownGuide } from '../../src/showing/library/show-guide.ts';
import type { ShownLine, ShownPlan } from '../../src/showing/shown/shown-plan.ts';
import type { ShownCurve } from '../../src/showing/shown/shown-what-if.ts';
import type { GuideData } from './guide-data.tsx';
import type { PlannerView } from './guide-planner.tsx';
import type { Link } from '../page/lists.tsx';
import type { ProseSection } from '../page/prose-section.tsx';
import type { Site } from '../page/site.ts';

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
