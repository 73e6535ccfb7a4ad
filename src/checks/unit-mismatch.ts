import type { Check, Finding } from './check.ts';
import type { Context } from './lookup/context.ts';
import { isConvertible, isMassAndVolume } from '../core/quantity/quantity.ts';
import { boughtPairs, packPairs, type UnitPair } from './lookup/unit-pairs.ts';
import { gapPairs, mixPairs, sharePairs } from './lookup/unit-pairs-in-guides.ts';
import { dimensionOf } from '../core/quantity/units.ts';

/** Two amounts that must be compared and cannot be: a volume of what is sold by mass, without a density. */
export const unitMismatch: Check = {
  code: 'unit-mismatch',
  gravity: 'stops',
  find: (context) => {
    const mixed = context.guidesAt.flatMap((read) => [
      ...mixPairs(read),
      ...sharePairs(read, context),
      ...gapPairs(read, context),
    ]);
    return [...packPairs(context), ...boughtPairs(context), ...mixed].flatMap((pair) =>
      mismatch(pair, context),
    );
  },
};

function mismatch(
  { kind, name, one, other, material }: UnitPair,
  { workspace }: Context,
): readonly Finding[] {
  const density = material === undefined ? undefined : workspace.materials[material]?.density;
  if (isConvertible(one.unit, other.unit, density !== undefined)) return [];
  const isBridged = material !== undefined && isMassAndVolume(one.unit, other.unit);
  const [mass, volume] = dimensionOf(one.unit) === 'mass' ? [one.unit, other.unit] : [other.unit, one.unit];
  return [
    {
      variant: isBridged ? `${kind}-density` : kind,
      places: [one.place, other.place],
      facts: {
        name,
        one: inWhat(one.unit),
        other: inWhat(other.unit),
        unit: other.unit,
        ...(isBridged ? { mass, volume, file: `materials/${material}.yaml` } : {}),
      },
    },
  ];
}

/** "in mL", "by count", "by area". */
function inWhat(unit: string): string {
  const dimension = dimensionOf(unit);
  if (dimension === 'count') return 'by count';
  return dimension === 'area' ? 'by area' : `in ${unit}`;
}
