import type { Workspace } from '../../core/model/workspace.ts';
import { type StepHazards, stepHazards } from '../../core/plan/scale/hazards.ts';
import type { PlannedLine } from '../../core/plan/result.ts';
import { controlWords } from '../../words/controls.ts';
import { otherDangerWords } from '../../words/hazards.ts';
import { planWords } from '../../words/plan.ts';
import { capital, fill, listed } from '../text/fill.ts';
import { materialName, toolName } from '../text/names.ts';
import { hazardStatement } from './show-ghs.ts';
import { type Shown, shown } from '../shown/shown.ts';

/** What a step meets, each as a sentence that names the products: "Oil spray: Flammable aerosol (H223)". */
export function showHazards(
  key: string,
  step: string,
  line: PlannedLine,
  workspace: Workspace,
): readonly Shown[] {
  const met = stepHazards(line.at, workspace).find((known) => known.step === step);
  return (met?.hazards ?? []).map((hazard, i) => shown(`${key}[${i}]`, hazardText(hazard, met!, workspace)));
}

function hazardText(hazard: string, { sources }: StepHazards, workspace: Workspace): string {
  const names = sources
    .filter(({ hazards }) => hazards.includes(hazard))
    .map(({ kind, id }) => (kind === 'tool' ? toolName(id, workspace) : materialName(id, workspace)));
  const source = capital(listed(names));
  const statement = hazardStatement(hazard);
  const danger = otherDangerWords[hazard];
  if (statement !== undefined) return fill(planWords.hazards.statement, { source, statement, code: hazard });
  if (danger !== undefined) return fill(planWords.hazards.danger, { source, statement: danger });
  return fill(planWords.hazards.unknown, { source, code: hazard });
}

/** Controls of a step: words of the published list, or the author's own. */
export function showControls(key: string, controls: readonly string[]): readonly Shown[] {
  return controls.map((control, i) => shown(`${key}[${i}]`, controlWords[control] ?? capital(control)));
}
