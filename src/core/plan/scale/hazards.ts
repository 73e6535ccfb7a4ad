import type { GuideAt } from '../../model/guide.ts';
import { guideUsed, isGuideUse } from '../../model/guide-use.ts';
import { allergens } from '../../model/material.ts';
import type { Workspace } from '../../model/workspace.ts';
import { exact } from '../../quantity/exact.ts';
import { convert, measure } from '../../quantity/quantity.ts';
import { materialsIn } from './materials-in.ts';
import { type StepAt, materialsOf, toolsOf } from './step-uses.ts';

/** What can hurt in one step, and where it comes from. */
export interface StepHazards {
  readonly step: string;
  /** GHS codes and other dangers, sorted. */
  readonly hazards: readonly string[];
  /** It needs a control and a caution that names it. */
  readonly dangerous: boolean;
  /** Flammable vapour or gas is about: kept apart in time from any ignition. */
  readonly vapour: boolean;
  /** Materials, tools, hot settings and ignition, in the order of the guide. */
  readonly sources: readonly HazardSource[];
}
export interface HazardSource {
  readonly kind: 'material' | 'tool' | 'heat' | 'ignition';
  /** Of the material or tool; the setting's name; the step. */
  readonly id: string;
  /** Empty for heat and ignition. */
  readonly hazards: readonly string[];
}

/**
 * What can hurt in each step of a guide. A step inherits the hazards of every material and tool it uses, a mix those of
 * all that is in it, and the model of another guide what somebody may react to. Nothing is guessed from words.
 *
 * Materials and tools that the workspace lacks are passed over: `unknown-material` speaks of them.
 */
export function stepHazards(at: GuideAt, workspace: Workspace): readonly StepHazards[] {
  return at.steps.map((step) => hazardsOf(at, step, workspace));
}

function hazardsOf(at: GuideAt, step: StepAt, workspace: Workspace): StepHazards {
  const sources = [
    ...materialsOf(at, step).map((id) => materialSource(id, workspace)),
    ...withinModels(at, step, workspace).map((id) => allergenSource(id, workspace)),
    ...[...new Set(toolsOf(at, step).map(({ use }) => use))].map((id) => toolSource(id, workspace)),
    ...hotSettings(step),
    ...(step.ignition ? [{ kind: 'ignition', id: step.id, hazards: [] } as const] : []),
  ].filter((source) => source !== undefined);
  const hazards = [...new Set(sources.flatMap((source) => source.hazards))].sort();
  return {
    step: step.id,
    hazards,
    dangerous: sources.length > 0,
    vapour: hazards.some(isFlammable),
    sources,
  };
}

function materialSource(id: string, { materials }: Workspace): HazardSource | undefined {
  const material = materials[id];
  const hazards = material ? [...material.hazards, ...material.also] : [];
  return hazards.length > 0 ? { kind: 'material', id, hazards } : undefined;
}

/** Materials in the models of other guides that a step handles, but for those that it handles itself. */
function withinModels(at: GuideAt, step: StepAt, workspace: Workspace): readonly string[] {
  const handled = materialsOf(at, step);
  const models = handled.filter(isGuideUse);
  const within = models.flatMap((use) => materialsIn(guideUsed(use), undefined, workspace));
  if (within.includes(`guide:${at.id}`)) return []; // in itself: told as that
  return [...new Set(within)].filter((id) => !handled.includes(id));
}

/** Glue that has set in a finished model gives off no vapour, but latex stays latex. */
function allergenSource(id: string, { materials }: Workspace): HazardSource | undefined {
  const hazards = (materials[id]?.also ?? []).filter((danger) => allergens.includes(danger));
  return hazards.length > 0 ? { kind: 'material', id, hazards } : undefined;
}

function toolSource(id: string, { tools }: Workspace): HazardSource | undefined {
  const hazards = tools[id]?.also ?? [];
  return hazards.length > 0 ? { kind: 'tool', id, hazards } : undefined;
}

/**
 * Settings hot enough to burn: above 45 °C.
 *
 * @source Threshold from memory: skin held against hot metal is injured from about 44 to 48 °C on.
 */
function hotSettings(step: StepAt): HazardSource[] {
  const isHot = ({ heat }: StepAt['set'][string]): boolean =>
    heat !== undefined && convert(measure(heat), '°C').value.compare(hot) > 0;
  const names = Object.keys(step.set).filter((name) => isHot(step.set[name]!));
  return names.map((id) => ({ kind: 'heat', id, hazards: [] }));
}
const hot = exact(45);

/**
 * Whether a GHS statement speaks of vapour, gas or spray that a flame sets alight.
 *
 * @source GHS Rev. 10, Annex 3: H220–H223 (gases, aerosols), H224–H226 (liquids and their vapour).
 */
export function isFlammable(code: string): boolean {
  return /^H22[0-6]$/.test(code);
}
