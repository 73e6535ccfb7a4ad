import type { Signal } from '../../core/model/guide.ts';
import type { planWords } from '../../words/plan.ts';
import type { ShownCutting } from './shown-cutting.ts';
import type { ShownSchedule } from './shown-schedule.ts';
import type { Shown } from './shown.ts';

/** A plan as finished text. */
export interface ShownPlan {
  /** "4 needle blocks", or the list of several. */
  readonly title: Shown;
  /** The figures at the head of the page: hands-on, build time (or ready), outlay, used cost each. */
  readonly facts: readonly ShownFact[];
  /** "For training only, never for patient care." */
  readonly trainingOnly: Shown;
  /** Local policy and whom to ask, then the data sheet, then this guide. Stands with every group of cautions. */
  readonly defers: Shown;
  /** The same in one line, for each step. */
  readonly defersAtStep: Shown;
  readonly lines: readonly ShownLine[];
  readonly shopping: {
    readonly rows: readonly ShownPurchase[];
    /** What each supplier brings: "£19.20 and £4.95 delivery". */
    readonly deliveries: readonly ShownDelivery[];
    /** Packs and deliveries. */
    readonly total: Shown;
    /** "at least", bought by area, order so many days before. */
    readonly notes: readonly Shown[];
  };
  /** How each material that comes in sheets, rolls or lengths is cut. */
  readonly cutting: readonly ShownCutting[];
  readonly costs: readonly ShownCost[];
  readonly tools: readonly {
    readonly id: string;
    readonly name: Shown;
    /** What of it can hurt. Empty where nothing is known to. */
    readonly dangers: Shown;
    readonly need: Shown;
    readonly owned: Shown;
  }[];
  readonly schedule: ShownSchedule;
  readonly warnings: readonly Shown[];
}

export interface ShownFact {
  readonly id: keyof typeof planWords.facts;
  readonly name: Shown;
  readonly value: Shown;
}

/** Models of one guide and level. */
export interface ShownLine {
  readonly guide: string;
  readonly level?: string;
  readonly title: Shown;
  /** "4 good ones, 1 spare: 5 made". */
  readonly count: Shown;
  /** "5 models": those that are made. */
  readonly models: Shown;
  /** All that are wanted are finished: nothing is to be made. */
  readonly isFinished?: true;
  readonly facts: readonly ShownFact[];
  /** Rows and, below the row that uses it, each ingredient of a mix. */
  readonly materials: readonly ShownMaterial[];
  readonly steps: readonly ShownStep[];
  /** All cautions of the level, most severe first. */
  readonly cautions: readonly ShownCaution[];
  /** Text of each link of the prose that begins with an amount, by index into `prose.links`. */
  readonly links: Readonly<Record<number, Shown>>;
}

export interface ShownMaterial {
  readonly id: string;
  /** Where links to the row lead; an ingredient has no such place. */
  readonly anchor?: string;
  /** The material; absent for a mix, and for the model of another guide. */
  readonly material?: string;
  /** The way from the site's root to the material, or to the guide whose model it is; absent for a mix. */
  readonly leadsTo?: string;
  readonly name: Shown;
  /** The specification: "bloom 200–250, unflavoured". */
  readonly must: Shown;
  readonly one: Shown;
  readonly total: Shown;
  /** An ingredient stands below its mix. */
  readonly ingredientOf?: string;
  /** "12 x 180 mm", "until grey". Empty text where there is none. */
  readonly note: Shown;
}

export interface ShownStep {
  readonly id: string;
  readonly number: Shown;
  readonly heading: Shown;
  /** "day 1, 09:00" or "Mon 30 November, 09:00"; of its first run. Empty where there is no schedule. */
  readonly begins: Shown;
  /** "in 2 runs of 2 models". Empty for one run. */
  readonly runs: Shown;
  /** What the graduated rule beside the step carries. */
  readonly times: readonly {
    readonly kind: 'hands-on' | 'wait';
    readonly time: Shown;
    readonly note: Shown;
  }[];
  /** The tray: for one full run. */
  readonly takes: readonly ShownTake[];
  readonly settings: readonly { readonly name: Shown; readonly value: Shown }[];
  readonly controls: readonly Shown[];
  readonly cautions: readonly ShownCaution[];
  /** GHS statements and other dangers met in the step, as sentences with their code. */
  readonly hazards: readonly Shown[];
  /** Hold limit: "hands off the next step within 45 min". Empty where there is none. */
  readonly limit: Shown;
  /** "next step not before 13:45". Empty where nothing waits. */
  readonly notBefore: Shown;
  /** What else must be known: vapour that clears, the directions of a product. */
  readonly also: readonly Shown[];
  /** What follows from when the step is ticked off; the same at every size of the batch. */
  readonly tickTimes: readonly TickTime[];
}

/** A moment that follows from when a step was ticked off, and the sentence that says it. */
export interface TickTime {
  readonly minutes: number;
  /** Nothing is let begin too early, or end too late, by the rounding to a minute. */
  readonly rounds: 'up' | 'down';
  /** Its `{time}` is for the page to fill. */
  readonly says: string;
}

/** One thing that goes into a step. Amount and unit stand apart, so that a page can set the number large. */
export interface ShownTake {
  readonly use: string;
  readonly amount: Shown;
  readonly unit: Shown;
  readonly name: Shown;
  /** "skin, 150 mm × 100 mm"; of several runs "576 g in all". Empty where there is nothing to say. */
  readonly note: Shown;
  /** What the step takes of it over all runs: the steps' totals add up to that of the material. */
  readonly total: Shown;
}

export interface ShownCaution {
  readonly id: string;
  readonly signal: Signal;
  readonly word: Shown;
  /** "Scald hazard: hot gel sticks to skin." and so on, the author's own words. */
  readonly hazard: Shown;
  readonly harm: Shown;
  readonly avoid: readonly Shown[];
  /** "Steps 3 and 4". Empty for the whole guide. */
  readonly steps: Shown;
}

export interface ShownPurchase {
  readonly material: string;
  readonly name: Shown;
  readonly needed: Shown;
  readonly fromStock: Shown;
  /** "2 x 500 g". */
  readonly packs: Shown;
  readonly supplier: Shown;
  readonly cost: Shown;
  readonly left: Shown;
}

export interface ShownDelivery {
  /** A key of the program's `suppliers`; absent where nobody says where packs are from. */
  readonly supplier?: string;
  readonly name: Shown;
  readonly goods: Shown;
  readonly charge: Shown;
  /** "ordered Mon 23 November, there Thu 26 November, 09:00"; undated, "order 3 working days before you start". */
  readonly when: Shown;
}

/** One of the six costs, for each line of the demand. */
export interface ShownCost {
  readonly id: keyof typeof planWords.costs;
  readonly name: Shown;
  /** What it counts, in one sentence. */
  readonly means: Shown;
  /** By line, with its name where the plan is of several (else empty); a single one where it is of the whole demand. */
  readonly each: readonly { readonly of: Shown; readonly sum: Shown }[];
}
