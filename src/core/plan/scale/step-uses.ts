import type { GuideAt } from '../../model/guide.ts';
import type { AtLevel } from '../../model/values.ts';
import type { StepUse } from '../../model/guide.ts';

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

/**
 * The meaning of a name: the row of that id; else the mix, with the rows that draw on it; else the ingredient, in each
 * mix that has it; else every row of that material.
 */
export function meaningOf(at: GuideAt, name: string): Named {
  const nothing: Named = { rows: [], mixes: [], ingredients: [] };
  const drawing = indexesOf(at.materials, (row) => row.use === name);
  const isMix = at.mixes.some(({ id }) => id === name);
  if (isMix) return { ...nothing, rows: drawing, mixes: [name] };
  const own = indexesOf(at.materials, (row) => row.id === name);
  if (own.length > 0) return { ...nothing, rows: own, mixes: mixesOf(at, own) };
  const ingredients = at.mixes.flatMap((mix) => ingredientsOf(mix, name));
  return ingredients.length > 0 ? { ...nothing, ingredients } : { ...nothing, rows: drawing };
}

/** Mixes that rows draw on. */
function mixesOf(at: GuideAt, rows: readonly number[]): readonly string[] {
  const ids = at.mixes.map(({ id }) => id);
  return [...new Set(rows.map((i) => at.materials[i]!.use))].filter((id) => ids.includes(id));
}

function ingredientsOf(mix: MixAt, name: string): Named['ingredients'] {
  return indexesOf(mix.of, ({ use }) => use === name).map((index) => ({ mix: mix.id, index }));
}

export function indexesOf<T>(items: readonly T[], isMeant: (item: T, index: number) => boolean): number[] {
  return items.flatMap((item, i) => (isMeant(item, i) ? [i] : []));
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
