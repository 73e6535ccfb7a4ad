import type { OtherDanger } from './material.ts';
import type { IsoDate, Money, Quantity, Rational } from './values.ts';

/** What stays: moulds, pots, scales. Shared by all guides. Read from `tools/<id>.yaml`. */
export interface Tool {
  readonly id: string;
  readonly name: string;
  readonly price?: Money;
  readonly priced?: IsoDate;
  /** Uses in its life, for its share of the cost. */
  readonly lasts?: Rational;
  /** The finest amount it can measure: amounts measured with it are shown to this. */
  readonly reads?: Quantity;
  readonly also: readonly OtherDanger[];
}
