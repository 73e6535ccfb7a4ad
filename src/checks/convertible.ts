import type { Material } from '../core/model/material.ts';
import type { Amount } from '../core/model/values.ts';
import { exact, type Exact } from '../core/quantity/exact.ts';
import { convert, sameDimension, type Measure } from '../core/quantity/quantity.ts';
import { dimensionOf } from '../core/quantity/units.ts';

/** g/mL, where somebody measured it. */
export type Density = Exact | undefined;

export function densityOf(material: Material | undefined): Density {
  return material?.density && exact(material.density.gramsPerMillilitre);
}

/** Whether an amount of one unit can be given in another: mass and volume through a density, and nothing else. */
export function isConvertible(from: string, to: string, hasDensity: boolean): boolean {
  return sameDimension(from, to) || (hasDensity && isMassAndVolume(from, to));
}

/** A measured density would bridge the two. */
export function isMassAndVolume(a: string, b: string): boolean {
  return [dimensionOf(a), dimensionOf(b)].sort().join() === 'mass,volume';
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
