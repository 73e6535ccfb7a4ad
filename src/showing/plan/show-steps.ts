import type { GuideAt } from '../../core/model/guide.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { PlannedLine, StepNeed } from '../../core/plan/result.ts';
import { planWords } from '../../words/plan.ts';
import { properly } from '../text/author-text.ts';
import { counted, fill, inWords } from '../text/fill.ts';
import { materialName, stepName, stepNumber } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import { showStepCautions } from '../safety/show-cautions.ts';
import { showControls, showHazards } from '../safety/show-hazards.ts';
import { type StepRuns, showBegins, showNotBefore, showStepTimes } from './show-step-times.ts';
import { showTickTimes } from './show-tick-times.ts';
import { showTakes } from './show-takes.ts';
import { type Shown, shown } from '../shown/shown.ts';
import type { ShownStep } from '../shown/shown-plan.ts';
import { showSetting } from '../text/temperatures.ts';
import { showDuration } from '../text/times.ts';

/** The steps of a line as its guide lists them: amounts and times of one full run, dangers before all else. */
export function showSteps(
  key: string,
  line: PlannedLine,
  runsOf: (step: string) => StepRuns,
  workspace: Workspace,
): readonly ShownStep[] {
  return line.steps.map((need) => showStep(`${key}.${need.step}`, need, line, runsOf(need.step), workspace));
}

function showStep(
  key: string,
  need: StepNeed,
  line: PlannedLine,
  runs: StepRuns,
  workspace: Workspace,
): ShownStep {
  const step = line.at.steps.find(({ id }) => id === need.step)!;
  return {
    id: step.id,
    number: shown(`${key}.number`, showCount(stepNumber(line.at, step.id))),
    heading: shown(`${key}.heading`, stepName(line.at, step.id)),
    begins: shown(`${key}.begins`, showBegins(runs)),
    runs: shown(`${key}.runs`, runsText(need)),
    times: showStepTimes(`${key}.times`, step, need, runs, workspace),
    takes: showTakes(`${key}.takes`, need, line, workspace),
    settings: showSettings(`${key}.settings`, step, workspace),
    controls: showControls(`${key}.controls`, step.controls),
    cautions: showStepCautions(`${key}.cautions`, line.at, step.id),
    hazards: showHazards(`${key}.hazards`, step.id, line, workspace),
    limit: shown(`${key}.limit`, limitText(step, line.at)),
    notBefore: shown(`${key}.notBefore`, showNotBefore(runs)),
    also: showAlso(`${key}.also`, step, need, workspace),
    tickTimes: showTickTimes(step, line.at, workspace),
  };
}

type StepAt = GuideAt['steps'][number];

/** "in 3 runs of 4 models"; empty for one run, and for none. */
function runsText({ runs }: StepNeed): string {
  const sizes = runs.map((models) => models.length);
  const most = Math.max(...sizes);
  if (runs.length < 2) return '';
  if (most === 1) return fill(planWords.steps.eachModel, { count: showCount(runs.length) });
  const sentence = sizes.every((size) => size === most) ? planWords.steps.oneOf : planWords.steps.upTo;
  return fill(sentence, { runs: counted(runs.length, 'run'), models: counted(most, 'model') });
}

function showSettings(key: string, step: StepAt, workspace: Workspace): ShownStep['settings'] {
  return Object.entries(step.set).map(([name, setting], i) => ({
    name: shown(`${key}[${i}].name`, inWords(name)),
    value: shown(`${key}[${i}].value`, showSetting(setting.text, workspace)),
  }));
}

/** Hold limits as sentences: of every next step, then of single ones. */
function limitText({ useWithin: { any, byStep } }: StepAt, at: GuideAt): string {
  const single = Object.entries(byStep).map(([next, time]) =>
    fill(planWords.steps.limitBefore, { step: stepName(at, next), time: showDuration(time) }),
  );
  const all = any ? [fill(planWords.steps.limit, { time: showDuration(any) })] : [];
  return [...all, ...single].join(' ');
}

/** What else must be known: vapour, flame, directions of the product. */
function showAlso(key: string, step: StepAt, need: StepNeed, workspace: Workspace): readonly Shown[] {
  const clears = step.clearsIn ? [fill(planWords.steps.clears, { time: showDuration(step.clearsIn) })] : [];
  const ignition = step.ignition ? [planWords.steps.ignition] : [];
  const directions = step.follow === 'directions' ? directionsOf(need, workspace) : [];
  return [...clears, ...ignition, ...directions].map((text, i) => shown(`${key}[${i}]`, text));
}

function directionsOf({ takes }: StepNeed, workspace: Workspace): readonly string[] {
  const ids = [...new Set(takes.map(({ material }) => material).filter((id) => id !== undefined))];
  return ids
    .filter((id) => workspace.materials[id]?.directions)
    .map((id) => {
      const material = materialName(id, workspace);
      const says = workspace.materials[id]?.directions?.says;
      return says === undefined
        ? fill(planWords.steps.directions, { material })
        : fill(planWords.steps.directionsSay, { material, says: properly(says) });
    });
}
