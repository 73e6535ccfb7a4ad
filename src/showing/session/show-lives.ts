import { planAt } from '../../core/model/plan-at.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { CohortPlan } from '../../core/plan/cohort/cohort.ts';
import type { ModelNeed } from '../../core/plan/cohort/model-needs.ts';
import { sessionWords } from '../../words/session.ts';
import { fill } from '../text/fill.ts';
import { type ShownCare, showInUse } from '../library/show-in-use.ts';
import { type Shown, shown } from '../shown/shown.ts';
import type { ShownPlan } from '../shown/shown-plan.ts';
import { guideName } from './session-names.ts';

/** The life of one model of a session, for those who look after it. */
export interface ShownLife {
  readonly guide: string;
  readonly level?: string;
  /** "Ultrasound needle block, Deep vessel" */
  readonly name: Shown;
  /** Set-up, between two uses, afterwards, and how it is renewed: as far as its guide says. */
  readonly care: readonly ShownCare[];
  /** "One use costs £0.36." Empty where it is not known. */
  readonly perUse: Shown;
}

/** Of a model's life only this belongs to a session: how it is stored and thrown away stands on its guide's page. */
const elsewhere = ['use', 'store', 'carry', 'dispose'];

/**
 * The life of each model that stands ready, as far as there is anything to say of it.
 *
 * @param plan  Of the session's models, shown: it knows what one use costs.
 */
export function showLives(
  key: string,
  { models }: CohortPlan,
  workspace: Workspace,
  plan?: ShownPlan,
): readonly ShownLife[] {
  return models.flatMap((need) => {
    const { guide, level } = need;
    const written = workspace.guides[guide];
    if (!written) return [];
    const own = `${key}.${level === undefined ? guide : `${guide}.${level}`}`;
    const care = showInUse(`${own}.care`, planAt(written, level), workspace).filter(
      ({ id }) => !elsewhere.includes(id),
    );
    const perUse = perUseText(need, plan);
    if (care.length === 0 && perUse === '') return [];
    return [
      {
        guide,
        ...(level === undefined ? {} : { level }),
        name: shown(`${own}.name`, guideName(workspace, guide, level)),
        care,
        perUse: shown(`${own}.perUse`, perUse),
      },
    ];
  });
}

/** Whole models stand in a plan before their parts. */
function perUseText({ guide, level }: ModelNeed, plan: ShownPlan | undefined): string {
  const line = plan?.lines.find((one) => one.guide === guide && one.level === level);
  const cost = line?.facts.find(({ id }) => id === 'per-use')?.value.text;
  return cost === undefined ? '' : fill(sessionWords.care.perUse, { cost });
}
