import type { Place } from '../../core/diagnostic.ts';
import { stepHazards, type HazardSource, type StepHazards } from '../../core/plan/scale/hazards.ts';
import type { Context, GuideAtLevel } from './context.ts';
import { materialName, toolName } from './names.ts';

/** A dangerous step, with what makes it so. */
export interface DangerousStep {
  readonly index: number;
  readonly id: string;
  readonly name: string;
  /** "Stockpot (hot-surface), heat 60 °C". */
  readonly dangers: string;
  /** The step, then each source. */
  readonly places: readonly [Place, ...Place[]];
}

/** The steps of a guide at one level that need a control and a caution. */
export function dangerousSteps(read: GuideAtLevel, context: Context): readonly DangerousStep[] {
  return stepHazards(read.at, context.workspace).flatMap(
    ({ step, dangerous, sources }: StepHazards, index) =>
      dangerous
        ? [
            {
              index,
              id: step,
              name: read.stepName(step),
              dangers: sources.map((source) => sourceText(source, index, read, context)).join(', '),
              places: [
                read.place('steps', index, 'id'),
                ...sources.map((source) => placeOf(source, index, read, context)),
              ],
            },
          ]
        : [],
  );
}

function sourceText(
  { kind, id, hazards }: HazardSource,
  step: number,
  { at }: GuideAtLevel,
  { workspace }: Context,
): string {
  if (kind === 'heat') return `${id} ${at.steps[step]!.set[id]!.text}`;
  if (kind === 'ignition') return 'ignition';
  const name = kind === 'material' ? materialName(workspace, id) : toolName(workspace, id);
  return `${name} (${hazards.join(', ')})`;
}

function placeOf(
  { kind, id, hazards }: HazardSource,
  step: number,
  read: GuideAtLevel,
  { workspace, origins }: Context,
): Place {
  if (kind === 'heat') return read.place('steps', step, 'set', id);
  if (kind === 'ignition') return read.key('steps', step, 'ignition');
  if (kind === 'tool') return origins.at(`tools/${id}/also`);
  const isCode = workspace.materials[id]!.hazards.some((code) => hazards.includes(code));
  return origins.at(`materials/${id}/${isCode ? 'hazards' : 'also'}`);
}
