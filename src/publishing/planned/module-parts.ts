import type { Module } from '../../core/model/module.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { CohortPlan } from '../../core/plan/cohort/cohort.ts';
import type { SessionTime } from '../../core/plan/cohort/session-question.ts';
import { deferral } from '../../showing/safety/deferral.ts';
import { type ShownMatrix, showMatrix } from '../../showing/module/show-matrix.ts';
import { type ShownModel, showModel, showRoom } from '../../showing/module/show-models.ts';
import { type ShownModule, showModule } from '../../showing/module/show-module.ts';
import { showDay } from '../../showing/module/show-day.ts';
import { type ShownTeaching, showTeaching } from '../../showing/module/show-teaching.ts';
import { type ShownLife, showLives } from '../../showing/session/show-lives.ts';
import { showSession } from '../../showing/session/show-session.ts';
import type { ShownSession } from '../../showing/session/shown-session.ts';
import type { Shown } from '../../showing/shown/shown.ts';
import type { ShownPlan } from '../../showing/shown/shown-plan.ts';
import type { PlannedGuide } from './planned-guides.ts';

/** A module with the people of a session, and the guides whose models they practise on. */
export interface ModuleToShow {
  readonly module: Module;
  /** From the edition's folder: `modules/knots-and-stitches`. */
  readonly folder: string;
  readonly cohort: CohortPlan;
  /** All its models in one plan; absent where it needs none. */
  readonly plan?: ShownPlan;
  /** Each once, in the order of the stations. */
  readonly guides: readonly PlannedGuide[];
}

/** A module as finished text, in parts: `session`, `lives`, `teaching` and `matrix` are for staff. */
export interface ShownModuleParts {
  readonly folder: string;
  readonly module: ShownModule;
  readonly day: ReturnType<typeof showDay>;
  readonly models: readonly ShownModel[];
  /** Dangers of what stands at the stations. */
  readonly room: readonly Shown[];
  /** Who has the last word, and whom to ask. */
  readonly defers: string;
  readonly session: ShownSession;
  /** All models in one plan. */
  readonly plan?: ShownPlan;
  readonly lives: readonly ShownLife[];
  readonly teaching: ShownTeaching;
  readonly matrix: ShownMatrix;
}

/** @param time  When the session is, as far as that is known. */
export function showModuleParts(
  { module, folder, cohort, guides, plan }: ModuleToShow,
  workspace: Workspace,
  time: SessionTime = {},
): ShownModuleParts {
  return {
    folder,
    module: showModule(module),
    day: showDay(module, cohort.agenda),
    models: guides.map((guide, i) => showModel(`models[${i}]`, guide, workspace)),
    room: showRoom(module, workspace),
    defers: deferral(workspace.program).inFull,
    session: showSession(module, cohort, workspace, time),
    ...(plan ? { plan } : {}),
    lives: showLives('lives', cohort, workspace, plan),
    teaching: showTeaching(module),
    matrix: showMatrix(module),
  };
}
