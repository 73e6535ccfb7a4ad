import type { GuideAt } from '../model/guide.ts';
import type { AtLevel } from '../model/values.ts';
import type { StepUse } from '../model/guide.ts';

/** A step, mix, row or use of a guide at one level. */
export type StepAt = GuideAt['steps'][number];
export type MixAt = GuideAt['mixes'][number];
export type RowAt = GuideAt['materials'][number];
export type ToolRowAt = GuideAt['tools'][number];
export type StepUseAt = AtLevel<StepUse>;

/** What a name in a step's `uses` means: rows of the materials, a mix, or an ingredient (of each mix that has it). */
export interface Named {
  /** Indexes into `at.materials`. */
  readonly rows: readonly number[];
  readonly mixes: readonly string[];
  readonly ingredients: readonly { readonly mix: string; readonly index: number }[];
}

/** What a step says it uses. Unsaid, a guide of one step uses all that it has, and any other step nothing. */
export function usesOf(at: GuideAt, step: StepAt): readonly StepUseAt[] {
  if (step.uses) return step.uses;
  return at.steps.length === 1 ? at.materials.map(({ id }) => ({ material: id })) : [];
}

/** The meaning of a name: a row's own id comes first, then what rows use, then a mix, then ingredients. */
export function meaningOf(at: GuideAt, name: string): Named {
  const byId = indexesOf(at.materials, (row) => row.id === name);
  const rows = byId.length > 0 ? byId : indexesOf(at.materials, (row) => row.use === name);
  const mixes = at.mixes
    .map(({ id }) => id)
    .filter((id) => id === name || rows.some((i) => at.materials[i]!.use === id));
  const ingredients =
    rows.length + mixes.length > 0 ? [] : at.mixes.flatMap((mix) => ingredientsOf(mix, name));
  return { rows, mixes, ingredients };
}

function ingredientsOf(mix: MixAt, name: string): Named['ingredients'] {
  return indexesOf(mix.of, ({ use }) => use === name).map((index) => ({ mix: mix.id, index }));
}

function indexesOf<T>(items: readonly T[], isMeant: (item: T) => boolean): number[] {
  return items.flatMap((item, i) => (isMeant(item) ? [i] : []));
}

/** Ids of the materials that a step handles: those it names, and all that is in a mix it uses. */
export function materialsOf(at: GuideAt, step: StepAt): readonly string[] {
  const meanings = usesOf(at, step).map(({ material }) => meaningOf(at, material));
  const found = meanings.flatMap(({ rows, mixes, ingredients }) => [
    ...rows.map((i) => at.materials[i]!.use),
    ...at.mixes.filter(({ id }) => mixes.includes(id)).flatMap((mix) => mix.of.map(({ use }) => use)),
    ...ingredients.map(({ mix, index }) => at.mixes.find(({ id }) => id === mix)!.of[index]!.use),
  ]);
  return [...new Set(found)].filter((id) => !at.mixes.some((mix) => mix.id === id));
}

/** Rows of the tools in use while a step is done: held over it, or in hand there. */
export function toolsOf(at: GuideAt, step: StepAt): readonly ToolRowAt[] {
  return at.tools.filter((row) => row.in.includes(step.id) || isHeldOver(at, row, step));
}

/** Taken in hand for the step alone; what is held over it anyway is not taken twice. */
export function isInHand(at: GuideAt, row: ToolRowAt, step: StepAt): boolean {
  return row.in.includes(step.id) && !isHeldOver(at, row, step);
}

/** The step is the first or last of the hold, or comes after the first and before the last. */
export function isHeldOver(at: GuideAt, { held }: ToolRowAt, step: StepAt): boolean {
  return held !== undefined && leadingTo(at, step.id).has(held.from) && leadingTo(at, held.to).has(step.id);
}

/** Ids of a step and of all that come before it. */
export function leadingTo(at: GuideAt, step: string): ReadonlySet<string> {
  const found = new Set([step]);
  for (const id of found)
    at.steps.find((other) => other.id === id)?.after.forEach((before) => found.add(before));
  return found;
}
