import type { catalogueWords } from '../../words/catalogue.ts';
import type { Shown } from './shown.ts';

export type FacetId = keyof typeof catalogueWords.facets;
export type OrderId = keyof typeof catalogueWords.orders;

/** All guides as the catalogue lists them, with the choices that narrow the list. */
export interface ShownCatalogue {
  /** Only those by which guides differ. */
  readonly facets: readonly ShownFacet[];
  /** In the order of the guides that were given. */
  readonly entries: readonly ShownEntry[];
  /** The longest build time: the whole length of the scale on which all are drawn. */
  readonly longest: Shown;
}

/** One thing by which guides differ, with a choice for each value that some guide has. */
export interface ShownFacet {
  readonly id: FacetId;
  readonly name: Shown;
  /** What to know before choosing. Empty where there is nothing. */
  readonly says: Shown;
  /** `any`: a guide with one of those chosen stays. `none`: it goes. */
  readonly keeps: 'any' | 'none';
  readonly options: readonly ShownOption[];
}
export interface ShownOption {
  /** Letters, digits, dots and hyphens. */
  readonly value: string;
  readonly name: Shown;
  /** Of a tool, how many there are. Empty for the others. */
  readonly note: Shown;
  /** How many guides have it. */
  readonly count: Shown;
}

export interface ShownEntry {
  /** What it has of each facet: `cost:2-to-5 hazard:H223`, between blanks. */
  readonly has: string;
  /** Its place in each order, from 1. */
  readonly ranks: Readonly<Record<OrderId, number>>;
  readonly cost: Shown;
  readonly build: Shown;
  readonly handsOn: Shown;
  readonly keeps: Shown;
  /** Dangers of its products and tools, each once. */
  readonly meets: readonly Shown[];
  /** Build time, and the hands-on part of it, in thousandths of the longest build time. Absent without a schedule. */
  readonly span?: { readonly build: number; readonly handsOn: number };
}
