import type { Module } from '../../core/model/module.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { Plan, PlannedLine } from '../../core/plan/result.ts';
import { stepHazards } from '../../core/plan/scale/hazards.ts';
import { planWords } from '../../words/plan.ts';
import { capital, fill } from '../text/fill.ts';
import { materialName } from '../text/names.ts';
import { containsText } from '../sheets/show-labels.ts';
import { dangerText } from '../safety/danger-text.ts';
import type { ShownGuide } from '../library/show-guide.ts';
import { type Shown, shown } from '../shown/shown.ts';
import type { ShownCaution, ShownLine } from '../shown/shown-plan.ts';

/** A model that trainees meet in a session: what is in it, what of it can hurt. */
export interface ShownModel {
  readonly guide: string;
  readonly title: Shown;
  readonly level?: Shown;
  readonly trains: Shown;
  /** "Contains water balloon (natural rubber latex)." */
  readonly contains: Shown;
  /** What of its materials can hurt, each once: "Brush-on contact adhesive: highly flammable liquid and vapour (H225)". */
  readonly hazards: readonly Shown[];
  readonly electrosurgery: Shown;
  /** Cautions of the whole guide: those that belong to no step of building it. */
  readonly cautions: readonly ShownCaution[];
}

/** What stands at the stations and can hurt: "Craft knife: a sharp blade, cuts". */
export function showRoom({ stations }: Module, { tools }: Workspace): readonly Shown[] {
  const used = new Set(stations.flatMap((station) => station.tools.map(({ use }) => use)));
  const dangerous = [...used].flatMap((id) => tools[id] ?? []).filter(({ also }) => also.length > 0);
  return dangerous.map(({ id, name, also }) =>
    shown(
      `room.${id}`,
      fill(planWords.hazards.danger, { source: capital(name), statement: also.map(dangerText).join('; ') }),
    ),
  );
}

/** A guide at one level with its plan, as text and exact. */
export interface PlannedModel {
  readonly guide: ShownGuide;
  readonly line: ShownLine;
  readonly computed: Plan;
}

export function showModel(
  key: string,
  { guide, line, computed }: PlannedModel,
  workspace: Workspace,
): ShownModel {
  const planned = computed.lines[0]!;
  return {
    guide: guide.id,
    title: shown(`${key}.title`, guide.title.text),
    ...(guide.level ? { level: shown(`${key}.level`, guide.level.name.text) } : {}),
    trains: shown(`${key}.trains`, guide.trains.text),
    contains: shown(`${key}.contains`, containsText(planned, workspace)),
    hazards: hazardTexts(planned, workspace).map((text, i) => shown(`${key}.hazards[${i}]`, text)),
    electrosurgery: shown(`${key}.electrosurgery`, guide.electrosurgery.text),
    cautions: line.cautions.filter(({ steps }) => steps.text === ''),
  };
}

/** Tools stay with those who build: what trainees hold is made of materials. */
function hazardTexts({ at }: PlannedLine, workspace: Workspace): readonly string[] {
  const sources = stepHazards(at, workspace).flatMap((step) => step.sources);
  const hazardsOf = new Map(
    sources.flatMap(({ kind, id, hazards }) => (kind === 'material' ? [[id, hazards] as const] : [])),
  );
  return [...hazardsOf].map(([id, hazards]) =>
    fill(planWords.hazards.danger, {
      source: capital(materialName(id, workspace)),
      statement: hazards.map(dangerText).join('; '),
    }),
  );
}
