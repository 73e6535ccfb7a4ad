import type { Holding } from '../model/material.ts';
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
  /**
   * Local wall clock by which all is ready: the plan then runs backwards from it, as late as possible. Not together
   * with `start`.
   */
  readonly readyBy?: string;
  /** Minutes to be ready before `readyBy`; none where left out. */
  readonly margin?: number;
  /** Until when models must be good (wall clock); `readyBy` where left out. */
  readonly goodUntil?: string;
  /** How many times the usual search for a schedule, above 0; 1 where left out. Work, never seconds. */
  readonly effort?: Rational;
  /** The day that counts as today. */
  readonly today: IsoDate;
  /** Stock on hand by material. */
  readonly stock?: Readonly<Record<string, OnHand>>;
  /** Models that are finished, or have come some way. */
  readonly finished?: readonly Finished[];
}

/** An exact amount in any unit of the material's dimension, or whole sheets, offcuts and rods of a size. */
export type OnHand =
  { readonly value: Rational; readonly unit: string } | { readonly pieces: readonly Holding[] };

/** Models of one guide and level (or one part of them) that need not be made, or not from the beginning. */
export interface Finished {
  readonly guide: string;
  readonly level?: string;
  readonly part?: string;
  /** Ready to use: so many fewer are made. */
  readonly models: number;
  /** Of those still to make: the first so many are past these steps, waits included. */
  readonly past: readonly { readonly step: string; readonly models: number }[];
}
