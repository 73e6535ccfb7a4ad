import type { Diagnostic } from '../diagnostic.ts';
import type { GuideAt } from '../model/guide.ts';
import type { Holding } from '../model/material.ts';
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
  /** One for each material that is cut into pieces, in the order of the requirements. */
  readonly cutting: readonly CuttingPlan[];
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
  /** So many of those wanted and spare are there already; left out where none is. */
  readonly finished?: number;
  /** At least wanted + spares - finished: more where some fail, or where runs are always full. May be none. */
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
  /** What stays of `total` in what is bought whole and does more models. */
  readonly unused: Measure;
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
  /** Models that each run serves: `[[1, 2], [3, 4], [5]]`. Runs that are past are left out. */
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
  /** What the models take. */
  readonly amount: Measure;
  readonly usual: Measure;
  /** What stays of what must be bought whole, should the stock not be enough. */
  readonly unused: Measure;
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
  /** Of what is cut: the same as whole sheets, offcuts and rods, as a stock file lists them. */
  readonly leftPieces?: readonly Holding[];
}

/** How one material is cut into the pieces of all lines. All lengths exact, in mm. */
export interface CuttingPlan {
  readonly material: string;
  /** Rectangles on whole sheets; rectangles along a roll; lengths from rods, tubes or cord. */
  readonly by: 'sheets' | 'roll' | 'lengths';
  /** Every sheet, roll or rod that is cut, one entry each, in the order in which they are cut. */
  readonly layouts: readonly CutLayout[];
  /** Less no cutting plan takes: outlay of packs where all have prices, else sheets, area (mm²) or length (mm). */
  readonly bound: { readonly of: 'cost' | 'sheets' | 'length'; readonly value: Exact };
  /** The same figure of this plan. */
  readonly reached: Exact;
  /** Area (length) of the pieces, of what is cut into. Up to 1. */
  readonly usedFraction: Exact;
}

/** One sheet, roll or rod: `x` goes across its width, `y` along its length, both from the lower left corner. */
export interface CutLayout {
  /** Index into the material's `packs`; absent where it is cut from stock on hand. */
  readonly pack?: number;
  /** Of a rod 0. */
  readonly width: Exact;
  readonly length: Exact;
  /** Length from the lower edge that is used; the rest above it is left whole. */
  readonly used: Exact;
  readonly pieces: readonly CutPiece[];
}
export interface CutPiece {
  readonly line: number;
  /** Index into the line's `at.materials`, and the id of the piece in that row. */
  readonly row: number;
  readonly piece: string;
  /** The model it is for, from 1 (the first of several); absent for an extra piece. */
  readonly model?: number;
  readonly x: Exact;
  readonly y: Exact;
  /** As it lies: of a turned piece the sides are swapped. Of a rod, `width` is 0. */
  readonly width: Exact;
  readonly height: Exact;
  readonly turned: boolean;
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
  /** Planned backwards: by when all is ready, the margin already taken off. */
  readonly readyBy?: number;
  /** Person-minutes. */
  readonly handsOn: number;
  readonly jobs: readonly PlannedJob[];
  /** When each line's last model is ready, and until when the first is good (absent where it keeps for ever). */
  readonly lines: readonly LineReady[];
  /** What decides when all is ready, from the first to the last: each begins when it does because of the one before. */
  readonly chain: readonly ChainLink[];
  /** How busy builders, places and tools are, in the order: builders, places, tools. */
  readonly loads: readonly Load[];
}

export interface LineReady {
  readonly ready: number;
  readonly useBy?: number;
  /** Of each model made, in their order. */
  readonly models: readonly { readonly ready: number; readonly useBy?: number }[];
}

/** A run on the critical chain, and what kept it from beginning earlier. */
export interface ChainLink {
  /** Index into `jobs`. */
  readonly job: number;
  /**
   * `start`: nothing did, the plan begins (or, planned backwards, ends) there. `step`: the run before, with its wait.
   * `limit`: a hold limit. `hours`: closing time. `delivery`: what was ordered. `apart`: vapour and ignition.
   */
  readonly because:
    'start' | 'step' | 'limit' | 'builders' | 'place' | 'tool' | 'apart' | 'hours' | 'delivery';
  /** The place or tool. */
  readonly id?: string;
}

/** From the first hands-on to ready: how many there are, the most in use at once, and minutes in use (each counted). */
export interface Load {
  readonly kind: 'builders' | 'place' | 'tool';
  /** Empty for builders. */
  readonly id: string;
  readonly has: number;
  readonly peak: number;
  readonly minutes: number;
  /** Minutes in which they could be used, each counted: builders in working hours, places and tools at any time. */
  readonly available: number;
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

/** Why there is no schedule; facts for the sentence. Of what is scarce, `has` says how many there are. */
export interface NoSchedule {
  readonly code: 'schedule-impossible' | 'schedule-not-found' | 'too-many-runs';
  readonly variant?: string;
  readonly facts: Readonly<Record<string, string>>;
  /** What would help: each has been tried, and has a schedule. None until `advised`. A hold limit is never weakened. */
  readonly helps: readonly Help[];
  /** The clock of the helps, and the minute from which its days are counted; the reference week where left out. */
  readonly clock?: Pick<PlannedSchedule, 'clock' | 'start'>;
}

/** A change of what the program has or when it begins, and what comes of it. */
export interface Help {
  readonly change: Change;
  /** When all is ready then, on the plan's clock. */
  readonly ready: number;
}

/** One thing changed, everything else as it was. */
export type Change =
  /** So many in all. */
  | { readonly kind: 'builders'; readonly count: number }
  | { readonly kind: 'place' | 'tool'; readonly id: string; readonly count: number }
  /** Orders (and work) may begin so many minutes earlier. */
  | { readonly kind: 'notice'; readonly minutes: number }
  /** All ready so many minutes later. */
  | { readonly kind: 'later'; readonly minutes: number }
  /** So many models of that line. */
  | { readonly kind: 'fewer'; readonly line: number; readonly wanted: number };

/** What a change would bring, beside the plan as it is. */
export interface WhatIf {
  readonly change: Change;
  /** When all is ready, or planned backwards when work begins; absent where there is no schedule. */
  readonly ready?: number;
  readonly firstHandsOn?: number;
  readonly outlay: Exact;
  /** With a tool or place bought for it where its price is known. */
  readonly cashToStart: Exact;
}

/** Outlay of one good model at some batch size. */
export interface CurvePoint {
  readonly models: number;
  readonly outlay: Exact;
  /** Nobody buys one model less for the same outlay and none more fits: the packs are full. */
  readonly full: boolean;
}
