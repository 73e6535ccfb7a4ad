import type { Guide } from '../../model/guide.ts';
import { planAt, usualLevel } from '../../model/plan-at.ts';
import type { Workspace } from '../../model/workspace.ts';
import { type HazardSource, stepHazards } from './hazards.ts';

/** Something that can hurt in one step of one guide, with what is done against it there. */
export interface HazardMet {
  readonly kind: HazardSource['kind'];
  /** Of the material or tool; the setting's name; the step. */
  readonly source: string;
  readonly guide: string;
  /** The level that has the step: the usual one where it does. */
  readonly level: string | undefined;
  readonly step: string;
  readonly controls: readonly string[];
  /** Ids of the cautions that name the step. */
  readonly cautions: readonly string[];
}

/** Every hazard of a workspace where it is met, at whatever level, by guide, in the order of its steps. */
export function hazardsMet(workspace: Workspace): readonly HazardMet[] {
  const ids = Object.keys(workspace.guides).sort();
  return ids.flatMap((id) => metIn(workspace.guides[id]!, workspace));
}

/** What several levels have in common is met once, at the first of them. */
function metIn(guide: Guide, workspace: Workspace): readonly HazardMet[] {
  const met = new Map<string, HazardMet>();
  for (const level of levelsOf(guide))
    for (const one of metAt(guide, level, workspace)) {
      const key = `${one.step} ${one.kind} ${one.source}`;
      if (!met.has(key)) met.set(key, one);
    }
  const place = guide.steps.map(({ id }) => id);
  return [...met.values()].sort((a, b) => place.indexOf(a.step) - place.indexOf(b.step));
}

/** The usual one first; a guide without levels is at none. */
function levelsOf(guide: Guide): readonly (string | undefined)[] {
  return [...new Set([usualLevel(guide), ...guide.levels.map(({ id }) => id)])];
}

function metAt(guide: Guide, level: string | undefined, workspace: Workspace): readonly HazardMet[] {
  const at = planAt(guide, level);
  return stepHazards(at, workspace).flatMap(({ step, sources }, i) =>
    sources.map(({ kind, id }) => ({
      kind,
      source: id,
      guide: guide.id,
      level,
      step,
      controls: at.steps[i]!.controls,
      cautions: at.cautions.flatMap((caution) => (caution.steps.includes(step) ? [caution.id] : [])),
    })),
  );
}
