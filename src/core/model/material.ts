import type { Duration, IsoDate, Keeping, Money, Quantity, Rational, Size } from './values.ts';

/** What is used up, shared by all guides. Read from `materials/<id>.yaml`. */
export interface Material {
  readonly id: string;
  readonly name: string;
  /** The specification, not the brand. */
  readonly must: readonly string[];
  readonly form: MaterialForm;
  /** The author's usual one first. May be empty (`missing-pack`), unless `free`. */
  readonly packs: readonly Pack[];
  /** Tap water: no price wanted. */
  readonly free: boolean;
  /** Mass per volume: `value` in g/mL exactly. The one bridge between mass and volume. */
  readonly density?: { readonly gramsPerMillilitre: Rational; readonly source?: string };
  readonly keeps: { readonly closed?: Keeping; readonly opened?: Keeping };
  /** The product's own times of drying or setting, by name: `{ tack, full }`. */
  readonly times: Readonly<Record<string, Duration>>;
  readonly directions?: { readonly says?: string; readonly link?: string; readonly dated?: IsoDate };
  /** GHS hazard statement codes, as the supplier's safety data sheet gives them: `H222`. */
  readonly hazards: readonly string[];
  /** GHS precautionary statement codes of its label, UN or EU: `P210`, `P410+P412`. */
  readonly precautions: readonly string[];
  readonly also: readonly OtherDanger[];
  readonly dataSheet?: { readonly link?: string; readonly dated?: IsoDate };
  /** Ids of materials that it must not meet. */
  readonly notWith: readonly string[];
  readonly instead: readonly Substitute[];
}

export const materialForms = ['bulk', 'sheet', 'roll', 'length', 'count'] as const;
export type MaterialForm = (typeof materialForms)[number];

/** Dangers that GHS has no code for. */
export const otherDangers = [
  'animal-tissue',
  'blade',
  'dust',
  'electrosurgery',
  'food-allergen',
  'hot-liquid',
  'hot-surface',
  'latex',
  'looks-clinical',
  'mould',
  'needle',
] as const;
export type OtherDanger = (typeof otherDangers)[number];
/** What somebody may react to. */
export const allergens: readonly OtherDanger[] = ['animal-tissue', 'food-allergen', 'latex'];

/** What a shop sells. */
export interface Pack {
  readonly holds: Holding;
  readonly price?: Money;
  readonly priced?: IsoDate;
  /** A key of the program's `suppliers`. */
  readonly from?: string;
  readonly code?: string;
  readonly link?: string;
  /** Overrides the supplier's. */
  readonly arrivesIn?: Duration;
}

/** `500 g`, `50`, `3 m`, `450 mm x 300 mm`, `5 x 450 mm x 300 mm`: so many of one thing. */
export interface Holding {
  /** Whole, at least 1. */
  readonly count: number;
  readonly each: Quantity | Size;
}

export interface Substitute {
  readonly use: string;
  /** So much of the substitute for one of the original. */
  readonly ratio: Rational;
  readonly tried: boolean;
  readonly note?: string;
}
