import type { Gravity, Place } from '../core/diagnostic.ts';
import type { Context } from './lookup/context.ts';

/** One thing that may be wrong with a workspace that can be read. Named by the bad thing, like its file. */
export interface Check {
  /** Also the file, the folder of its cases and the anchor in the manual. */
  readonly code: string;
  /** How it weighs; a finding may weigh otherwise. */
  readonly gravity: Gravity;
  /** It compares with a plan, so it is made last, and only of guides that can be planned. */
  readonly needsPlan?: true;
  /** All findings, those of one guide at several levels included: the same one is told once. */
  readonly find: (context: Context) => readonly Finding[];
}

/** One case of what a check looks for. How severe it is follows from the guides that use the file of its first place. */
export interface Finding {
  readonly variant?: string | undefined;
  /** Most telling first. */
  readonly places: readonly [Place, ...Place[]];
  readonly facts: Readonly<Record<string, string>>;
  readonly gravity?: Gravity;
}
