import type { InPieces } from '../../core/in-pieces.ts';
import { advising } from '../../core/plan/compare/advised.ts';
import { curving } from '../../core/plan/compare/curve.ts';
import type { Question } from '../../core/plan/compare/with-change.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { OwnSettings } from '../../core/plan/own/own-settings.ts';
import type { PageData } from '../../core/plan/own/page-data.ts';
import { questionOf } from '../../core/plan/own/question-of.ts';
import { planning } from '../../core/plan/plan.ts';
import type { Plan } from '../../core/plan/result.ts';
import { showCurve } from '../../showing/compare/show-curve.ts';
import { showingPlan } from '../../showing/plan/show-plan.ts';
import { showRefusal } from '../../showing/plan/show-refusal.ts';
import type { ShownPlan } from '../../showing/shown/shown-plan.ts';
import type { ShownCurve } from '../../showing/shown/shown-what-if.ts';

/**
 * What the page shows for some settings, as finished text: the plan, amounts in the prose included
 * (`plan.lines[0].links`), and what other sizes of the batch cost; or the sentences that say why there is no plan.
 */
export type Answer = { readonly plan: ShownPlan; readonly curve?: ShownCurve } | Refused;
export interface Refused {
  readonly refused: readonly string[];
}

/** A plan, and what other sizes of its batch cost, still to be worked out: that is several times the work of the plan. */
export interface FirstAnswer {
  readonly plan: ShownPlan;
  /** The same, exact and unworded, and what it was made of: for the sheets. */
  readonly computed: Plan;
  readonly workspace: Workspace;
  readonly curve: InPieces<ShownCurve | undefined>;
}

/** The answer of the page of one guide, in small pieces of work: the letters that `publish` and `plan` print. */
export function* answering(data: PageData, own: OwnSettings): InPieces<Answer> {
  const first = yield* answeringFirst(data, own);
  if ('refused' in first) return first;
  const curve = yield* first.curve;
  return { plan: first.plan, ...(curve ? { curve } : {}) };
}

/** The same in two steps: the plan, and from there the curve. */
export function* answeringFirst(data: PageData, own: OwnSettings): InPieces<FirstAnswer | Refused> {
  const question = questionOf(data, own);
  const { workspace, demand, settings } = question;
  const made = yield* planning(workspace, demand, settings);
  if ('refused' in made) return { refused: made.refused.map(showRefusal) };
  const plan = yield* advising(question, made);
  yield;
  const shown = yield* showingPlan(plan, workspace);
  return { plan: shown, computed: plan, workspace, curve: showingCurve(question, plan) };
}

/** Of one line alone: what other sizes of the batch of several would be, nobody has said. */
function* showingCurve(
  { workspace, demand, settings }: Question,
  plan: Plan,
): InPieces<ShownCurve | undefined> {
  const [line, ...others] = demand;
  if (!line || others.length > 0 || plan.lines[0]!.made === 0) return undefined;
  const points = yield* curving(workspace, line, settings);
  return points.length > 0 ? showCurve(points, plan, workspace) : undefined;
}
