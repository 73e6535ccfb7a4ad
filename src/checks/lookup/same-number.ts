import type { Amount, Size } from '../../core/model/values.ts';
import { exact, type Exact } from '../../core/quantity/exact.ts';
import { compare, isConvertible, measure } from '../../core/quantity/quantity.ts';
import type { Leading } from '../../core/quantity/read.ts';
import { type Density, inUnit, mostOf } from './convertible.ts';

type Written = Leading['amount'];

/** Whether the text says the number of the front matter: in any unit of it, a size either way round. */
export function isSameNumber(said: Written, is: Written, density?: Density): boolean {
  if ('sides' in said || 'sides' in is) return isSameSize(said, is);
  return isSameAmount(asAmount(said), asAmount(is), density);
}

/** Those that can be compared with what the text says, the nearest first; where none can be, all as they are. */
export function nearestFirst<T extends { readonly is: Written; readonly density?: Density }>(
  said: Written,
  numbers: readonly T[],
): readonly T[] {
  const alike = numbers.filter(({ is, density }) => isSameKind(said, is, density));
  const away = new Map(alike.map((number) => [number, distance(said, number.is, number.density)]));
  const sorted = [...alike].sort((a, b) => away.get(a)!.compare(away.get(b)!));
  return sorted.length > 0 ? sorted : numbers;
}

/** Two sizes of as many sides, two counts, two amounts of one kind. */
function isSameKind(said: Written, is: Written, density: Density): boolean {
  if ('sides' in said || 'sides' in is) return sidesOf(said) !== undefined && sidesOf(said) === sidesOf(is);
  return isConvertible(asAmount(said).unit, asAmount(is).unit, density !== undefined);
}

/** How far apart two numbers of one kind are; of sizes the sum over their sides. */
function distance(said: Written, is: Written, density: Density): Exact {
  if ('sides' in said || 'sides' in is) {
    const [a, b] = [sorted(said), sorted(is)];
    const apart = a.map((side, i) => inUnit(side, 'mm')!.sub(inUnit(b[i]!, 'mm')!).abs());
    return apart.reduce((sum, one) => sum.add(one));
  }
  const to = asAmount(is);
  return inUnit(mostOf(asAmount(said)), to.unit, density)!
    .sub(exact(to.most))
    .abs();
}

/** A length is a size of one side. */
function sidesOf(written: Written): number | undefined {
  if ('sides' in written) return written.sides.length;
  return 'unit' in written && isConvertible(written.unit, 'mm', false) ? 1 : undefined;
}

function isSameSize(said: Written, is: Written): boolean {
  if (!isSameKind(said, is, undefined)) return false;
  const [a, b] = [sorted(said), sorted(is)];
  return a.every((side, i) => compare(side, b[i]!) === 0);
}

function sorted(written: Written) {
  const sides = 'sides' in written ? written.sides.map(measure) : [mostOf(asAmount(written))];
  return [...sides].sort(compare);
}

function asAmount(written: Exclude<Written, Size>): Amount {
  if ('unit' in written) return written;
  const count = String(written.count);
  return { least: count, usual: count, most: count, unit: '' };
}

/** Both ends of a range; or one number, which is its upper end or the usual one. */
function isSameAmount(said: Amount, is: Amount, density: Density): boolean {
  const inItsUnit = (value: string) => inUnit({ value: exact(value), unit: said.unit }, is.unit, density);
  const [least, most] = [inItsUnit(said.least), inItsUnit(said.most)];
  if (!least || !most) return false;
  if (!least.equals(most)) return least.equals(exact(is.least)) && most.equals(exact(is.most));
  return most.equals(exact(is.most)) || most.equals(exact(is.usual));
}
