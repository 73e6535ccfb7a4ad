/**
 * A plan as finished text. Every leaf is a `Shown`: the letters that command line, page and browser all print, with
 * a stable key by which the browser finds the place to replace. Templates place these; they never add or round.
 */
export interface Shown {
  /** `lines[0].materials[3].total`: stable while the structure of the plan is. */
  readonly key: string;
  readonly text: string;
}

export interface ShownPlan {
  /** "4 needle blocks", or the list of several. */
  readonly title: Shown;
  /** The figures at the head of the page: hands-on, build time (or ready), outlay, used cost each. */
  readonly facts: readonly ShownFact[];
  readonly lines: readonly ShownLine[];
  readonly shopping: {
    readonly rows: readonly ShownPurchase[];
    readonly total: Shown;
    /** "at least", bought by area, order so many days before. */
    readonly notes: readonly Shown[];
  };
  readonly costs: readonly ShownCost[];
  readonly tools: readonly { readonly id: string; readonly name: Shown; readonly need: Shown; readonly owned: Shown }[];
  readonly schedule: ShownSchedule;
  readonly warnings: readonly Shown[];
}

export interface ShownFact {
  readonly id: 'hands-on' | 'build-time' | 'ready' | 'outlay' | 'used-each' | 'per-use' | 'keeps' | 'lasts';
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
  /** The material, absent for a mix. */
  readonly material?: string;
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
  readonly times: readonly { readonly kind: 'hands-on' | 'wait'; readonly time: Shown; readonly note: Shown }[];
  /** The tray: for one full run. */
  readonly takes: readonly { readonly use: string; readonly amount: Shown; readonly unit: Shown; readonly name: Shown; readonly note: Shown }[];
  readonly settings: readonly { readonly name: Shown; readonly value: Shown }[];
  readonly controls: readonly Shown[];
  readonly cautions: readonly ShownCaution[];
  /** GHS statements and other dangers met in the step, as sentences with their code. */
  readonly hazards: readonly Shown[];
  /** Hold limit: "hands off the next step within 45 min". Empty where there is none. */
  readonly limit: Shown;
  readonly notBefore: Shown;
}

export interface ShownCaution {
  readonly id: string;
  readonly signal: 'danger' | 'warning' | 'caution' | 'notice';
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

/** One of the six costs, for each line of the demand. */
export interface ShownCost {
  readonly id: 'used' | 'outlay' | 'with-tools' | 'with-labour' | 'per-use' | 'cash-to-start';
  readonly name: Shown;
  /** What it counts, in one sentence. */
  readonly means: Shown;
  /** By line; a single one where the cost is of the whole demand. */
  readonly each: readonly Shown[];
}

export interface ShownSchedule {
  /** Why there is no schedule, else empty. */
  readonly none: Shown;
  /** "2 builders; times of the reference week." */
  readonly says: Shown;
  readonly buildTime: Shown;
  /** Runs of one step and one builder that follow each other are one row. */
  readonly days: readonly {
    readonly day: Shown;
    readonly rows: readonly {
      readonly from: Shown;
      readonly to: Shown;
      readonly who: Shown;
      readonly what: Shown;
      readonly then: Shown;
    }[];
  }[];
  /** The picture: places along its width in thousandths. */
  readonly strip: {
    readonly rows: readonly {
      readonly line: number;
      readonly step: string;
      readonly label: Shown;
      readonly bars: readonly { readonly kind: 'hands-on' | 'wait'; readonly from: number; readonly to: number }[];
    }[];
    readonly closed: readonly { readonly from: number; readonly to: number }[];
    readonly ticks: readonly { readonly at: number; readonly label: Shown; readonly day: boolean }[];
  };
}
