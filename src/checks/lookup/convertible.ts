import type { Material } from '../../core/model/material.ts';
import type { Amount } from '../../core/model/values.ts';
import { exact, type Exact } from '../../core/quantity/exact.ts';
import { convert, isConvertible, type Measure } from '../../core/quantity/quantity.ts';

/** g/mL, where somebody measured it. */
export type Density = Exact | undefined;

export function densityOf(material: Material | undefined): Density {
  return material?.density && exact(material.density.gramsPerMillilitre);
}

/** The same amount in another unit; `undefined` where the two cannot be compared. */
export function inUnit(from: Measure, unit: string, density?: Density): Exact | undefined {
  return isConvertible(from.unit, unit, density !== undefined)
    ? convert(from, unit, density).value
    : undefined;
}

/** The upper end, which is bought and shared out. */
export function mostOf({ most, unit }: Pick<Amount, 'most' | 'unit'>): Measure {
  return { value: exact(most), unit };
}
