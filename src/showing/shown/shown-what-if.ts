import type { Shown } from './shown.ts';

/** What single changes would bring, as finished text. */
export interface ShownWhatIf {
  readonly rows: readonly {
    /** "One more builder" */
    readonly change: Shown;
    /** "ready day 2, 11:00 instead of day 3, 09:18", of one day "ready day 3, 09:10 instead of 09:18" */
    readonly brings: Shown;
    /** "nothing more to buy" */
    readonly costs: Shown;
    /** Nothing is ready earlier; planned backwards, work begins no later. */
    readonly isIdle: boolean;
  }[];
}

/** Outlay of one good model by the size of the batch. */
export interface ShownCurve {
  /** "Packs are full at 4, 8 and 12 models." */
  readonly full: Shown;
  readonly rows: readonly {
    readonly models: Shown;
    readonly each: Shown;
    /** "full", "this batch", both, or empty. */
    readonly note: Shown;
  }[];
  readonly drawing: CurveDrawing;
}

/** Places in thousandths: `at` of the width, `up` of the height. */
export interface CurveDrawing {
  readonly points: readonly {
    readonly at: number;
    readonly up: number;
    readonly full: boolean;
    readonly current: boolean;
    /** Of those that are marked; empty of the others. */
    readonly label: Shown;
  }[];
  readonly across: readonly { readonly at: number; readonly label: Shown }[];
  readonly up: readonly { readonly at: number; readonly label: Shown }[];
}
