import type { Diagnostic } from '../../diagnostic.ts';
import type { Workspace } from '../../model/workspace.ts';
import { ceil, exact } from '../../quantity/exact.ts';
import { ratio } from '../../quantity/quantity.ts';
import type { Line } from './line.ts';
import { warning } from '../refusal.ts';
import { needsOf } from '../scale/scale.ts';

/** From so many times the author's own batch on, more of it is another risk. Common practice, no source. */
const farMore = exact(4);

/**
 * Whether a batch needs far more spray or solvent than the author's own: what is safe beside an open window for four
 * models may not be for forty. One warning for each material.
 */
export function moreOfIt(line: Line, workspace: Workspace): readonly Diagnostic[] {
  const { at, made } = line;
  const own = at.states?.for ?? 1;
  if (made <= own) return [];
  const [now, then] = [amounts(line), amounts({ at, needs: needsOf(at, own, own) })];
  return [...now].flatMap(([id, amount]) => {
    const before = then.get(id)!;
    if (!isBreathedIn(id, workspace) || before.value.n === 0n) return [];
    const times = ratio(amount, before);
    if (times.compare(farMore) < 0) return [];
    const material = workspace.materials[id]!.name;
    return [
      warning('batch-much-larger', {
        material,
        guide: at.title,
        times: String(ceil(times)),
        made: String(made),
        own: String(own),
      }),
    ];
  });
}

/** The usual amount of each material of a line, rows and ingredients apart from mixes. */
function amounts({ at, needs }: Pick<Line, 'at' | 'needs'>) {
  const rows = needs.rows.map(({ row, usual }) => [at.materials[row]!.use, usual] as const);
  const ingredients = needs.mixes.flatMap(({ ingredients: of }) =>
    of.map(({ use, usual }) => [use, usual] as const),
  );
  return new Map([...rows, ...ingredients]);
}

/**
 * Spray, flammable gas or vapour, or what harms by being breathed in.
 *
 * @source GHS Rev. 10, Annex 3: H220–H226 (flammable), H229 (pressurised), H304, H330–H336 (aspiration, inhalation).
 */
function isBreathedIn(id: string, { materials }: Workspace): boolean {
  return materials[id]?.hazards.some((code) => /^H(22[0-69]|304|33[0-6])$/.test(code)) ?? false;
}
