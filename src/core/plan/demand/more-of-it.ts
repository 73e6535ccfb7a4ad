import type { Diagnostic } from '../../diagnostic.ts';
import type { Workspace } from '../../model/workspace.ts';
import { ceil, exact } from '../../quantity/exact.ts';
import { ratio } from '../../quantity/quantity.ts';
import type { Line } from './line.ts';
import { warning } from '../refusal.ts';
import { requirementsOf } from '../scale/requirements.ts';
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
  const before = requirementsOf([{ at, needs: needsOf(at, own, own) }], workspace);
  return requirementsOf([line], workspace).flatMap(({ material, usual }, i) => {
    const then = before[i]!.usual;
    if (!isBreathedIn(material, workspace) || then.value.n === 0n) return [];
    const times = ratio(usual, then);
    if (times.compare(farMore) < 0) return [];
    const facts = { times: String(ceil(times)), made: String(made), own: String(own) };
    const { name } = workspace.materials[material]!;
    return [warning('batch-much-larger', { material: name, guide: at.title, ...facts })];
  });
}

/**
 * Spray, flammable gas or vapour, or what harms by being breathed in.
 *
 * @source GHS Rev. 10, Annex 3: H220–H226 (flammable), H229 (pressurised), H304, H330–H336 (aspiration, inhalation).
 */
function isBreathedIn(id: string, { materials }: Workspace): boolean {
  return materials[id]?.hazards.some((code) => /^H(22[0-69]|304|33[0-6])$/.test(code)) ?? false;
}
