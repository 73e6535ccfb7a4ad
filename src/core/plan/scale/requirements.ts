import { isGuideUse } from '../../model/guide-use.ts';
import type { GuideAt } from '../../model/guide.ts';
import type { Material, Pack } from '../../model/material.ts';
import type { Workspace } from '../../model/workspace.ts';
import { exact, zero } from '../../quantity/exact.ts';
import { type Measure, add, areaOf, convert, measure, times } from '../../quantity/quantity.ts';
import type { Requirement } from '../result.ts';
import type { Needs } from './scale.ts';

/**
 * Each material summed over all lines of a demand, in the order in which the guides first name it, in the unit of its
 * first pack. Mixes count as what is in them.
 */
export function requirementsOf(
  lines: readonly { readonly at: GuideAt; readonly needs: Needs }[],
  workspace: Workspace,
): readonly Requirement[] {
  const parts = lines.flatMap(({ at, needs }, line) =>
    materialParts(at, needs).map((part) => ({ ...part, line })),
  );
  const names = [...new Set(parts.map(({ material }) => material))];
  return names.map((id) =>
    requirementOf(
      parts.filter(({ material }) => material === id),
      workspace.materials[id]!,
    ),
  );
}

interface MaterialPart {
  readonly material: string;
  readonly total: Measure;
  readonly usual: Measure;
  readonly unused: Measure;
}

/** Rows of materials, and at the first row of a mix all that is in it. */
function materialParts(at: GuideAt, { rows, mixes }: Needs): MaterialPart[] {
  const uses = rows.map(({ row }) => at.materials[row]!.use);
  return rows.flatMap(({ total, usual, unused }, row) => {
    const material = uses[row]!;
    const mix = mixes.find((need) => need.mix === material);
    if (!mix) return isGuideUse(material) ? [] : [{ material, total, usual, unused }];
    if (uses.indexOf(material) < row) return [];
    return mix.ingredients.map(({ use, total, usual }) => {
      return { material: use, total, usual, unused: times(total, zero) };
    });
  });
}

function requirementOf(
  parts: readonly (MaterialPart & { readonly line: number })[],
  material: Material,
): Requirement {
  const unit = buyingUnit(material) ?? parts[0]!.total.unit;
  const sum = (amounts: readonly Measure[]): Measure =>
    amounts.map((amount) => convert(amount, unit, densityOf(material))).reduce(add, { value: zero, unit });
  const sums = (some: readonly MaterialPart[]) => {
    const [unused, total] = [sum(some.map((part) => part.unused)), sum(some.map((part) => part.total))];
    const amount = { value: total.value.sub(unused.value), unit };
    return { amount, usual: sum(some.map((part) => part.usual)), unused };
  };
  const lines = [...new Set(parts.map(({ line }) => line))];
  return {
    material: material.id,
    ...sums(parts),
    by: lines.map((line) => ({ line, ...sums(parts.filter((part) => part.line === line)) })),
  };
}

/** The unit of the first pack: of sheets an area, of rods a length. */
function buyingUnit({ packs }: Material): string | undefined {
  return packs[0] && packContent(packs[0]).unit;
}

/** All that a pack holds: `5 x 450 mm x 300 mm` is 675,000 mm². */
export function packContent({ holds }: Pick<Pack, 'holds'>): Measure {
  const each = 'sides' in holds.each ? areaOf(holds.each) : measure(holds.each);
  return times(each, exact(holds.count));
}

/** g/mL, where somebody measured it. */
export function densityOf(material: Material | undefined) {
  return material?.density && exact(material.density.gramsPerMillilitre);
}
