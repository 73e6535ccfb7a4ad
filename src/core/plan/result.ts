import type { Diagnostic } from '../diagnostic.ts';
import type { GuideAt } from '../model/guide.ts';
import type { Exact } from '../quantity/exact.ts';
import type { Measure } from '../quantity/quantity.ts';

export type { Measure };

/**
 * The answer to one demand: exact throughout, nothing rounded, nothing worded. `showing` makes text of it,
 * `exports` makes files of it.
 */
export interface Plan {
  readonly lines: readonly PlannedLine[];
  readonly requirements: readonly Requirement[];
  readonly purchases: readonly Purchase[];
  /** One for each supplier that is bought from, in the order of the program's suppliers. */
  readonly deliveries: readonly Delivery[];
  readonly tools: readonly ToolNeed[];
  readonly cost: PlanCost;
  readonly schedule: PlannedSchedule | { readonly none: NoSchedule };
  /** Codes of `words`, without places: what the reader of the plan should know. */
  readonly warnings: readonly Diagnostic[];
}

/** Models of one guide and level, numbered 1..made. */
export interface PlannedLine {
  readonly guide: string;
  readonly level?: string;
  /** The guide at that level, as the plan used it. */
  readonly at: GuideAt;
  /** The part that is made alone, where one was asked for. */
  readonly part?: string;
  /** Good ones, without spares. */
  readonly wanted: number;
  /** So many of those wanted go into other models of this plan; left out where none do. */
  readonly forOthers?: number;
  readonly spares: number;
  /** At least wanted + spares: more where some fail, or where runs are always full. */
  readonly made: number;
  readonly rows: readonly RowNeed[];
  readonly mixes: readonly MixNeed[];
  readonly steps: readonly StepNeed[];
}

/** What one row of a guide's materials comes to for the whole line, waste included. */
export interface RowNeed {
  /** Index into `at.materials`. */
  readonly row: number;
  /** For all models made; the upper end of a range. Of pieces: their area or length together. */
  readonly total: Measure;
  /** The usual end, which is costed. */
  readonly usual: Measure;
  /** What one model alone would take (its row as written), before waste; the upper end of a range. */
  readonly one: Measure;
  /** How many of each piece, extra ones included. */
  readonly pieces: readonly { readonly piece: string; readonly count: number }[];
}

/** What a mix comes to: how much goes into the pot, of all and of each ingredient, what stays there included. */
export interface MixNeed {
  readonly mix: string;
  readonly total: Measure;
  /** Of one model, before waste and what stays in the pot. */
  readonly one: Measure;
  readonly ingredients: readonly {
    readonly use: string;
    readonly total: Measure;
    readonly usual: Measure;
    readonly one: Measure;
  }[];
}

/** What a step takes: over the whole line, and for one full run. */
export interface StepNeed {
  readonly step: string;
  /** Models that each run serves: `[[1, 2], [3, 4], [5]]`. */
  readonly runs: readonly (readonly number[])[];
  readonly takes: readonly StepTake[];
  /** Of materials, their mixes' ingredients and tools: GHS codes and other dangers, sorted. */
  readonly hazards: readonly string[];
  /** It needs a control and a caution. */
  readonly dangerous: boolean;
}
export interface StepTake {
  /** The id of a row, or the material of an ingredient. */
  readonly use: string;
  /** The material, absent where the row draws on a mix. */
  readonly material?: string;
  readonly total: Measure;
  /** For one full run; in a batch smaller than that, for the run there is. */
  readonly run: Measure;
  /** For one model, before waste. */
  readonly one: Measure;
  readonly pieces: readonly {
    readonly piece: string;
    readonly total: number;
    readonly run: number;
    readonly one: number;
  }[];
}

/** A material summed over the whole demand, in the unit of its first pack (area and length of sheets and rods). */
export interface Requirement {
  readonly material: string;
  readonly amount: Measure;
  readonly usual: Measure;
  readonly by: readonly { readonly line: number; readonly amount: Measure; readonly usual: Measure }[];
}

export interface Purchase {
  readonly material: string;
  readonly needed: Measure;
  readonly fromStock: Measure;
  /** Only packs that are bought; the index is into the material's `packs`. */
  readonly packs: readonly { readonly pack: number; readonly count: number }[];
  /** Absent where no price is known or nothing is for sale. Zero where free. */
  readonly cost?: Exact;
  readonly left: Measure;
  /** Bought by area or length until cutting plans are made. */
  readonly byArea: boolean;
}

/** What one supplier brings. */
export interface Delivery {
  /** A key of the program's `suppliers`; absent for packs of which nobody says where they are from. */
  readonly supplier?: string;
  /** Price of all packs from there, as far as it is known. */
  readonly goods: Exact;
  readonly charge: Exact;
  /** Dated plans only: when the order goes out, and when the last of it is there (minutes since 1970 in UTC). */
  readonly ordered?: number;
  readonly arrives?: number;
}

export interface ToolNeed {
  readonly tool: string;
  /** The most in use at once. */
  readonly peak: number;
  /** Absent where the program does not say. */
  readonly owned?: number;
  readonly toBuy: number;
}

/** All in the program's currency, exact. */
export interface PlanCost {
  readonly currency: string;
  /** No: the price of some material or delivery is missing, and every sum that it enters is "at least". */
  readonly complete: boolean;
  /** No: the price of some tool is missing: with tools, with labour and cash to start are "at least". */
  readonly toolsComplete: boolean;
  /** Packs and deliveries. */
  readonly outlay: Exact;
  /** Outlay, and the tools that are not owned. */
  readonly cashToStart: Exact;
  /** One entry for each line of the demand. */
  readonly each: readonly LineCost[];
  /** Person-minutes of hands-on, all lines. */
  readonly handsOn: number;
}
/** Per good model, but for the hours. A model that goes into another counts in both: where it is made, and there. */
export interface LineCost {
  readonly used: Exact;
  readonly outlay: Exact;
  readonly withTools: Exact;
  readonly withLabour: Exact;
  /** Absent where the guide does not say how long it lasts. */
  readonly perUse?: Exact;
  /** Person-minutes of hands-on of the whole line. */
  readonly handsOn: number;
}

export interface PlannedSchedule {
  /** The reference week (undated: minutes from Monday 00:00), or dates (minutes since 1970 in UTC). */
  readonly clock: 'reference-week' | 'dated';
  /** When orders go out, or the reference week begins. */
  readonly start: number;
  readonly firstHandsOn: number;
  readonly ready: number;
  /** ready - first hands-on. */
  readonly makespan: number;
  readonly lowerBound: number;
  readonly optimal: boolean;
  /** From the first hands-on to the last model ready, materials at hand. */
  readonly buildTime: number;
  /** From ordering to ready; dated plans only. */
  readonly leadTime?: number;
  /** Person-minutes. */
  readonly handsOn: number;
  readonly jobs: readonly PlannedJob[];
  /** When each line's last model is ready, and until when the first is good (absent where it keeps for ever). */
  readonly lines: readonly { readonly ready: number; readonly useBy?: number }[];
}

/** One run: hands-on from `start` to `end`, then its wait to `waitEnd`. In order of start. */
export interface PlannedJob {
  readonly line: number;
  readonly step: string;
  /** From 1. */
  readonly run: number;
  readonly models: readonly number[];
  readonly start: number;
  readonly end: number;
  /** Equal to `end` where there is no wait. */
  readonly waitEnd: number;
  readonly people: number;
  /** Builders from 1; as many as `people`. */
  readonly builders: readonly number[];
  readonly places: Readonly<Record<string, number>>;
  readonly tools: Readonly<Record<string, number>>;
  /** Where hands-on was paused: its stretches. */
  readonly stretches?: readonly (readonly [from: number, to: number])[];
}

/**
 * Why there is no schedule; facts for the sentence. Of what is scarce, `has` says how many there are, and `enough`
 * with how many a schedule was found.
 */
export interface NoSchedule {
  readonly code: 'schedule-impossible' | 'schedule-not-found' | 'too-many-runs';
  readonly variant?: string;
  readonly facts: Readonly<Record<string, string>>;
}
