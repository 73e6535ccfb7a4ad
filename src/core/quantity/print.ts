import type { Holding } from '../model/material.ts';
import type { Amount, Quantity, Size } from '../model/values.ts';
import { exact, exactText } from './exact.ts';
import type { Measure } from './quantity.ts';

/** The machine form, exact: `1260 g`, `12`, `103/30 m`. Reading it gives the same measure back. */
export function printMeasure({ value, unit }: Measure): string {
  return unit === '' ? exactText(value) : `${exactText(value)} ${unit}`;
}

export function printQuantity({ value, unit }: Quantity): string {
  return printMeasure({ value: exact(value), unit });
}

/** `150 mm x 100 mm`. */
export function printSize(size: Size): string {
  return size.sides.map(printQuantity).join(' x ');
}

/** `350 g`, `8–14 g`; the usual amount of a range stands apart. */
export function printAmount({ least, most, unit }: Amount): string {
  if (least === most) return printQuantity({ value: most, unit });
  return `${exactText(exact(least))}–${printQuantity({ value: most, unit })}`;
}

/** `500 g`, `5 x 450 mm x 300 mm`. */
export function printHolding({ count, each }: Holding): string {
  const one = 'sides' in each ? printSize(each) : printQuantity(each);
  return count === 1 ? one : `${count} x ${one}`;
}
