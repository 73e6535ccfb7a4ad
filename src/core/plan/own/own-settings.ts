import type { Holding } from '../../model/material.ts';
import type { Program } from '../../model/program.ts';
import type { Money } from '../../model/values.ts';
import type { PlanSettings } from '../demand.ts';

/** What the reader of a guide sets of their own; the published page holds where left out. All JSON, all exact. */
export interface OwnSettings extends Pick<
  PlanSettings,
  'builders' | 'start' | 'readyBy' | 'margin' | 'goodUntil' | 'stock'
> {
  /** Good models of the page's own level. */
  readonly batch?: number;
  /** Good models of other levels, made along with them: `{ deep: 4 }`. */
  readonly along?: Readonly<Record<string, number>>;
  /** Only this part of the models is made. */
  readonly part?: string;
  readonly units?: Program['units'];
  readonly paper?: Program['paper'];
  /** Wage for one hour of one person. */
  readonly labour?: Money;
  /** How many there are of a tool, by its id. */
  readonly owned?: Readonly<Record<string, number>>;
  /** By material: these packs are for sale and no others, the usual one first. */
  readonly packs?: Readonly<Record<string, readonly OwnPack[]>>;
}

/** What the reader's own shop sells. */
export interface OwnPack {
  readonly holds: Holding;
  /** Unknown where left out: every sum that it enters is then "at least". */
  readonly price?: Money;
}
