import { Bug } from '../diagnostic.ts';
import type { Quantity, Size } from '../model/values.ts';
import type { Exact } from './exact.ts';
import { exact, rational } from './exact.ts';
import type { Unit } from './units.ts';
import { dimensionOf, unitOf } from './units.ts';

/** An exact amount in a unit of the table of units. */
export interface Measure {
  readonly value: Exact;
  readonly unit: string;
}

export function measure(quantity: Quantity): Measure {
  return { value: exact(quantity.value), unit: quantity.unit };
}

export function quantity(measure: Measure): Quantity {
  return { value: rational(measure.value), unit: measure.unit };
}

/**
 * The same amount in another unit, exactly.
 *
 * @param density  g/mL: the one bridge between mass and volume.
 * @throws {Bug} When the units do not measure the same thing: `unit-mismatch` should have stopped the plan before.
 */
export function convert(from: Measure, unit: string, density?: Exact): Measure {
  const [source, target] = [unitOf(from.unit), unitOf(unit)];
  if (source === target) return from;
  const bridge = bridgeBetween(source, target, density);
  if (!bridge) throw new Bug('units do not measure the same thing', { from: from.unit, to: unit });
  return { value: fromBase(toBase(from.value, source).mul(bridge), target), unit };
}

/** What a base amount is multiplied by: 1 within a dimension, the density from mL to g, its inverse back. */
function bridgeBetween(from: Unit, to: Unit, density?: Exact): Exact | undefined {
  if (from.dimension === to.dimension) return exact(1);
  if (!density) return undefined;
  if (from.dimension === 'volume' && to.dimension === 'mass') return density;
  if (from.dimension === 'mass' && to.dimension === 'volume') return density.inverse();
  return undefined;
}

/** In the base of its dimension: mm, mm², mL, g, s, N, °C. */
function toBase(value: Exact, { factor, offset }: Unit): Exact {
  return (offset ? value.add(exact(offset)) : value).mul(exact(factor));
}

function fromBase(base: Exact, { factor, offset }: Unit): Exact {
  const value = base.div(exact(factor));
  return offset ? value.sub(exact(offset)) : value;
}

/** The sum, in the unit of `a`. */
export function add(a: Measure, b: Measure): Measure {
  return { value: a.value.add(convert(b, a.unit).value), unit: a.unit };
}

export function times(a: Measure, x: Exact): Measure {
  return { value: a.value.mul(x), unit: a.unit };
}

/** Below zero where `a` is the less, zero where they are the same amount, above where it is the more. */
export function compare(a: Measure, b: Measure): number {
  return a.value.compare(convert(b, a.unit).value);
}

/** How many times `b` goes into `a`. @throws {Bug} When `b` is nothing. */
export function ratio(a: Measure, b: Measure): Exact {
  const divisor = convert(b, a.unit).value;
  if (divisor.n === 0n) throw new Bug('a share of nothing', { unit: b.unit });
  return a.value.div(divisor);
}

export function sameDimension(a: string, b: string): boolean {
  return dimensionOf(a) === dimensionOf(b);
}

/** Whether an amount of one unit can be given in another: mass and volume through a density, and nothing else. */
export function isConvertible(from: string, to: string, hasDensity: boolean): boolean {
  return sameDimension(from, to) || (hasDensity && isMassAndVolume(from, to));
}

/** A measured density would bridge the two. */
export function isMassAndVolume(a: string, b: string): boolean {
  return [dimensionOf(a), dimensionOf(b)].sort().join() === 'mass,volume';
}

/** The area of a piece of two sides, in mm². */
export function areaOf(size: Size): Measure {
  if (size.sides.length !== 2) throw new Bug('an area has two sides', { sides: size.sides.length });
  const [width, height] = size.sides.map((side) => convert(measure(side), 'mm').value);
  return { value: width!.mul(height!), unit: 'mm²' };
}
