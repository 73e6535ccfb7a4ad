import type { Guide, Step, UsedInUse } from '../../core/model/guide.ts';
import { isGuideUse } from '../../core/model/guide-use.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { materialsIn } from '../../core/plan/scale/materials-in.ts';

/** Ids of the materials that a guide names: in rows, mixes, waits, patterns and the life after the build. */
export function materialsNamed(guide: Guide): ReadonlySet<string> {
  const mixes = new Set(guide.mixes.map(({ id }) => id));
  const rows = guide.materials.map(({ use }) => use).filter((use) => !mixes.has(use) && !isGuideUse(use));
  const ingredients = guide.mixes.flatMap(({ of }) => of.map(({ use }) => use));
  const inUse = usesInLife(guide).map(({ used }) => used.material);
  const directions = guide.steps.flatMap((step) => directionsNamed(step).map(({ material }) => material));
  const printedOn = guide.patterns.flatMap(({ on }) => (on === undefined ? [] : [on]));
  return new Set([...rows, ...ingredients, ...inUse, ...directions, ...printedOn]);
}

/** Ids of the materials that whoever holds a model may touch, of whatever level it is. */
export function materialsHeld({ id, levels }: Guide, workspace: Workspace): readonly string[] {
  const all = levels.length === 0 ? [undefined] : levels.map((level) => level.id);
  return [...new Set(all.flatMap((level) => materialsIn(id, level, workspace)))];
}

/** What a model uses up after it is built, each with the way to it. */
export function usesInLife({ inUse }: Pick<Guide, 'inUse'>): readonly {
  readonly used: UsedInUse;
  readonly way: readonly (string | number)[];
}[] {
  const parts = [
    ['set-up', inUse.setUp],
    ['between', inUse.between],
    ['after', inUse.after],
  ] as const;
  const ofParts = parts.flatMap(([key, part]) =>
    (part?.uses ?? []).map((used, i) => ({ used, way: ['in-use', key, 'uses', i] })),
  );
  const ofRenewals = inUse.renew.flatMap(({ materials }, renewal) =>
    materials.map((used, i) => ({ used, way: ['in-use', 'renew', renewal, 'materials', i] })),
  );
  return [...ofParts, ...ofRenewals];
}

/** Times of a step that the directions of a material give: `{ as: contact-adhesive.full }`. */
export function directionsNamed({ wait }: Pick<Step, 'wait'>): readonly {
  readonly material: string;
  readonly time: string;
}[] {
  if (!wait) return [];
  const times = [wait.usual, ...Object.values(wait.ifRoom)];
  const each = times.flatMap((time) => ('byLevel' in time ? Object.values(time.byLevel) : [time]));
  return each.filter((time) => 'material' in time);
}

/** Ids of the guides that a file of the workspace touches: its own, those that use it, none of a module, or all. */
export function guidesTouched(file: string, { guides }: Workspace): readonly Guide[] {
  const [, kind, id] = /^(guides|materials|tools|modules)\/([^/.]+)/.exec(file) ?? [];
  const all = Object.values(guides);
  if (kind === 'guides') return all.filter((guide) => guide.id === id);
  if (kind === 'materials') return all.filter((guide) => materialsNamed(guide).has(id!));
  if (kind === 'tools') return all.filter((guide) => guide.tools.some(({ use }) => use === id));
  return kind === 'modules' ? [] : all;
}
