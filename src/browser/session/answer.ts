import type { InPieces } from '../../core/in-pieces.ts';
import type { CohortSettings } from '../../core/plan/cohort/cohort.ts';
import { sessionQuestion, sessionTime } from '../../core/plan/cohort/session-question.ts';
import type { SessionData } from '../../core/plan/own/session-data.ts';
import { planning } from '../../core/plan/plan.ts';
import { type ShownLife, showLives } from '../../showing/session/show-lives.ts';
import { showSession } from '../../showing/session/show-session.ts';
import type { ShownSession } from '../../showing/session/shown-session.ts';
import { showingPlan } from '../../showing/plan/show-plan.ts';
import { showRefusal } from '../../showing/plan/show-refusal.ts';
import type { ShownPlan } from '../../showing/shown/shown-plan.ts';

/** What the reader of a session's page sets. */
export interface OwnSession extends Omit<CohortSettings, 'spares'> {
  /** "2027-03-01T13:00", by the clock of the program. */
  readonly readyBy?: string;
}

/** The session as finished text, and all its models in one plan: absent where it needs none, or why there is none. */
export interface SessionAnswer {
  readonly session: ShownSession;
  readonly plan?: ShownPlan;
  /** How each model is looked after, and what one use costs. */
  readonly lives: readonly ShownLife[];
  readonly refused: readonly string[];
}

/** What the page of a session shows for some people and a day: the letters that `publish` and `plan` print. */
export function* answeringSession(
  { module, workspace, today }: SessionData,
  { readyBy, ...people }: OwnSession,
): InPieces<SessionAnswer> {
  const own = { today, ...(readyBy === undefined ? {} : { readyBy }) };
  const { cohort, demand, settings } = sessionQuestion(module, workspace, people, own);
  const session = showSession(module, cohort, workspace, sessionTime(own, workspace.program));
  const lives = (plan?: ShownPlan) => showLives('lives', cohort, workspace, plan);
  if (demand.length === 0) return { session, lives: lives(), refused: [] };
  const plan = yield* planning(workspace, demand, settings);
  if ('refused' in plan) return { session, lives: lives(), refused: plan.refused.map(showRefusal) };
  const shown = yield* showingPlan(plan, workspace);
  return { session, plan: shown, lives: lives(shown), refused: [] };
}
