import type { Shown } from './shown.ts';

/** Who does what when, what decides the end, and how busy everything is, as finished text. */
export interface ShownSchedule {
  /** Why there is no schedule, else empty. */
  readonly none: Shown;
  /** Where there is none: what would help, a sentence each. */
  readonly helps: readonly Shown[];
  /** "2 builders; times of the reference week." */
  readonly says: Shown;
  /** Planned backwards: by when all is to be ready, and when to begin at the latest. Else empty. */
  readonly backwards: Shown;
  readonly buildTime: Shown;
  /** When each line is ready, and how long its first is good: "All are ready day 3, 09:10". Its name as in `days`. */
  readonly ready: readonly { readonly of: Shown; readonly says: Shown }[];
  /** Whether a shorter schedule may exist, and by how much. */
  readonly bound: Shown;
  /** When each model is ready and by when it is to be used; empty where all of a line are ready at once. */
  readonly models: readonly ShownReady[];
  /** What decides when all is ready, from the first to the last. */
  readonly decides: readonly ShownLink[];
  readonly loads: readonly ShownLoad[];
  /** Runs of one step and one builder that follow each other are one row. */
  readonly days: readonly {
    readonly day: Shown;
    readonly rows: readonly {
      readonly from: Shown;
      readonly to: Shown;
      readonly who: Shown;
      /** Index of the line, and its name where the plan is of several (else empty). */
      readonly line: number;
      readonly of: Shown;
      readonly what: Shown;
      readonly then: Shown;
    }[];
  }[];
  readonly strip: ShownStrip;
}

/** The picture: places along its width in thousandths. */
export interface ShownStrip {
  readonly rows: readonly {
    readonly line: number;
    readonly step: string;
    /** Of the step, as its guide counts them. */
    readonly number: Shown;
    readonly label: Shown;
    readonly bars: readonly {
      readonly kind: 'hands-on' | 'wait';
      readonly from: number;
      readonly to: number;
    }[];
    /** Stretches that decide the end. */
    readonly decides: readonly { readonly from: number; readonly to: number }[];
  }[];
  readonly closed: readonly { readonly from: number; readonly to: number }[];
  readonly ticks: readonly { readonly at: number; readonly label: Shown; readonly day: boolean }[];
}

/** Models of one line that are ready at once: "models 1–4", "Tue 1 December, 14:00", "Sun 6 December, 14:00". */
export interface ShownReady {
  readonly line: number;
  readonly models: Shown;
  readonly ready: Shown;
  /** Empty where they keep so long that no day of the plan's clock says it. */
  readonly useBy: Shown;
}

/** Runs that decide the end, one after the other for the same reason. */
export interface ShownLink {
  /** Index of the line; absent where it counts those that are not listed. */
  readonly line?: number;
  /** Its name where the plan is of several, else empty. */
  readonly of: Shown;
  /** "day 1, 10:40–11:10" */
  readonly when: Shown;
  /** "Pour the gel, run 2" */
  readonly what: Shown;
  /** "waits for a tool: Loaf tin". */
  readonly because: Shown;
}

export interface ShownLoad {
  readonly kind: 'builders' | 'place' | 'tool';
  /** Something on the chain waits for it, or all are in use for a good part of the time. */
  readonly isScarce: boolean;
  readonly name: Shown;
  readonly has: Shown;
  readonly peak: Shown;
  /** "63 %" of the time in which it could be used. */
  readonly busy: Shown;
}
