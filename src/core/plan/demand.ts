import type { IsoDate, Rational } from '../model/values.ts';

/** So many good models of one guide and level. */
export interface DemandLine {
  readonly guide: string;
  /** The usual level where left out; absent in a plan where the guide has none. */
  readonly level?: string;
  /** One part of the models alone: only the steps for each of it are done. */
  readonly part?: string;
  /** Good models wanted: 1 to 10,000. The published batch (`states.for`, else 1) where left out. */
  readonly wanted?: number;
}

/** What the reader may set; the program's own values hold where left out. All JSON. */
export interface PlanSettings {
  readonly builders?: number;
  /** Share of spares to add (`"1/10"`); none where left out. */
  readonly spares?: Rational;
  /** Local wall clock `2026-11-30T09:00`; without it the plan is in the reference week. */
  readonly start?: string;
  /** Schedules that may be tried, at least 1; as many as the search finds worth it where left out. Work, never seconds. */
  readonly effort?: number;
  /** The day that counts as today. */
  readonly today: IsoDate;
  /** Stock on hand by material, as exact amounts in any unit of its dimension. */
  readonly stock?: Readonly<Record<string, { readonly value: Rational; readonly unit: string }>>;
}
