import type {
  Amount,
  AtLevel,
  Duration,
  Keeping,
  Money,
  Quantity,
  Rational,
  Size,
  Target,
  Varied,
} from './values.ts';
import type { Prose } from './prose.ts';
import type { Reviewed } from './reviewed.ts';

/** How to build one model. Read from `guides/<id>/guide.md`. */
export interface Guide extends Reviewed {
  readonly id: string;
  readonly trains?: string;
  /** Empty where the guide has one level. */
  readonly levels: readonly Level[];
  /** Empty where the whole model wears as one. */
  readonly parts: readonly Part[];
  readonly aUseIs?: string;
  /** Uses of one model; absent where parts have their own. */
  readonly lasts?: Rational;
  readonly keeps: readonly KeepsAt[];
  readonly mixes: readonly Mix[];
  readonly materials: readonly MaterialRow[];
  readonly patterns: readonly Pattern[];
  readonly tools: readonly ToolRow[];
  readonly steps: readonly Step[];
  readonly checks: readonly QualityCheck[];
  readonly cautions: readonly Caution[];
  readonly inUse: InUse;
  /** Good ones of those made, above 0 up to 1: `"9/10"`. */
  readonly yields: Rational;
  /** `no` where unsaid (`said` is then false). */
  readonly electrosurgery: { readonly allowed: boolean; readonly said: boolean };
  readonly states?: StatedFigures;
  readonly prose: Prose;
}

/** A guide without maps by level: what checks and plan see. Made by `planAt`. */
export type GuideAt = AtLevel<Omit<Guide, 'prose'>> & {
  readonly prose: Prose;
  /** The level it was made for; absent where the guide has none. */
  readonly level?: string;
  /** Where each kept row stands in the guide as written, for the table of origins: `steps[2]` was `steps/originOf.steps[2]`. */
  readonly originOf: Readonly<Record<RowsWithLevels, readonly number[]>>;
};
export type RowsWithLevels = 'materials' | 'mixes' | 'tools' | 'steps' | 'checks' | 'cautions';

export interface Level {
  readonly id: string;
  readonly name: string;
  readonly usual: boolean;
}

export interface Part {
  readonly id: string;
  readonly name: string;
  readonly lasts?: Rational;
}

export interface KeepsAt {
  readonly for: Keeping;
  readonly at: string;
  readonly how?: string;
  readonly source?: string;
}

/** Rows that a guide may keep for some levels only. */
interface Levelled {
  readonly only?: readonly string[];
}

/** What one amount, run or caution serves. */
export type Basis =
  | { readonly per: 'model' }
  | { readonly per: 'part'; readonly part: string }
  /** As many models as one of the tool `holds`. */
  | { readonly per: 'tool'; readonly tool: string }
  /** At least 1. */
  | { readonly per: 'every'; readonly models: number }
  | { readonly per: 'batch' };

/** Something mixed from ingredients: the row that uses it draws on what it makes. */
export interface Mix extends Levelled {
  readonly id: string;
  readonly name?: string;
  readonly makes: Varied<Quantity>;
  /** The share that stays in the pot, below 1: divides (`/ 0.95`). */
  readonly leftBehind: Rational;
  readonly of: readonly Ingredient[];
}

export interface Ingredient {
  readonly use: string;
  readonly amount: Varied<Amount>;
  /** When enough is in: `until: grey`. */
  readonly until?: string;
}

/** One line of the materials of a guide. `use` names a material or a mix. Has `amount`, or `pieces`. */
export interface MaterialRow extends Levelled {
  /** `use`, unless the author gave another. Unique in the guide, with mixes and parts. */
  readonly id: string;
  readonly use: string;
  readonly amount?: Varied<Amount>;
  readonly pieces: readonly Piece[];
  /** Between pieces, not at edges. */
  readonly gap?: Quantity;
  /** Multiplies (`x 1.05`): `"1/20"`. Of pieces: whole extra pieces, rounded up. */
  readonly waste: Rational;
  /** Basis of the amount; each model where unsaid. */
  readonly for: Basis;
  /** Bought whole, used by so many models. */
  readonly does?: number;
}

export interface Piece {
  /** Local to its row. */
  readonly id: string;
  /** Two sides of a sheet, or the one length of a rod. */
  readonly size: Varied<Size>;
  readonly count: Varied<number>;
  readonly turn: boolean;
  readonly pattern?: string;
}

export interface Pattern {
  readonly id: string;
  readonly file: string;
  readonly on?: string;
  readonly does?: number;
}

export interface ToolRow extends Levelled {
  readonly use: string;
  /** How many one hold takes. */
  readonly count: number;
  /** Models one of it holds; 1 where unsaid. */
  readonly holds: number;
  readonly held?: { readonly from: string; readonly to: string };
  /** Held while hands are on in these steps. */
  readonly in: readonly string[];
}

export interface Step extends Levelled {
  /** The slug of its heading, unless `heading` says another. */
  readonly id: string;
  readonly heading?: string;
  readonly for: Basis;
  readonly handsOn: { readonly once: Varied<Duration>; readonly each: Varied<Duration> };
  /** 0 = nobody, a machine. */
  readonly people: number;
  /** Places held while hands-on, per run. */
  readonly at: Readonly<Record<string, number>>;
  readonly wait?: Wait;
  readonly watched: boolean;
  readonly waitsAt: Readonly<Record<string, { readonly count: number; readonly per: 'model' | 'run' }>>;
  readonly useWithin: {
    readonly any?: Varied<Duration>;
    readonly byStep: Readonly<Record<string, Varied<Duration>>>;
  };
  readonly mayPause: boolean;
  /** no = a run is always full. */
  readonly partial: boolean;
  /** Steps before it; reading has put in the step before where unsaid. */
  readonly after: readonly string[];
  /** Absent where unsaid. */
  readonly uses?: readonly StepUse[];
  /** Exact settings by name, printed with a box to tick: `{ heat: 60 °C }`. */
  readonly set: Readonly<Record<string, Varied<Setting>>>;
  /** `directions` of the material used. */
  readonly follow?: 'directions';
  readonly controls: readonly string[];
  readonly ignition: boolean;
  readonly clearsIn?: Duration;
}

/** A setting as written, with the hottest temperature that it speaks of. */
export interface Setting {
  readonly text: string;
  readonly heat?: Quantity;
}

export interface Wait {
  readonly usual: Varied<WaitTime>;
  /** Longer in some rooms: `if-damp: 24 h`. */
  readonly ifRoom: Readonly<Partial<Record<'cold' | 'damp' | 'hot', Varied<WaitTime>>>>;
}
/** A time, or the time that a material's own directions give: `{ as: contact-adhesive.full }`. */
export type WaitTime = Duration | { readonly material: string; readonly time: string };

/** `gel`, `{ material: water, amount: 600 mL }`, `{ material: felt-3mm, pieces: [skin] }`. */
export interface StepUse {
  /** A row, a mix, or an ingredient of a mix. */
  readonly material: string;
  readonly amount?: Varied<Amount>;
  readonly pieces?: readonly string[];
}

export interface QualityCheck extends Levelled {
  readonly id: string;
  readonly measure?: string;
  readonly target?: Varied<Target>;
  readonly ask?: string;
  readonly like?: string;
  readonly unlike?: string;
  readonly after?: string;
  readonly each: 'model' | 'run' | 'batch';
  readonly by?: string;
  readonly ifNot?: Varied<string>;
}

/** As ANSI Z535.6 defines them; on the situation, never derived from a GHS signal word. Most severe first. */
export const signals = ['danger', 'warning', 'caution', 'notice'] as const;
export type Signal = (typeof signals)[number];

export interface Caution extends Levelled {
  readonly id: string;
  readonly signal: Signal;
  /** Empty: the whole guide. */
  readonly steps: readonly string[];
  readonly hazard: string;
  readonly harm?: string;
  readonly avoid: readonly string[];
}

export interface InUse {
  readonly setUp?: InUsePart;
  readonly between?: InUsePart;
  readonly after?: InUsePart;
  readonly renew: readonly {
    readonly id: string;
    readonly times?: number;
    readonly steps: readonly string[];
    readonly materials: readonly UsedInUse[];
  }[];
  readonly dispose?: { readonly to?: string; readonly not?: string };
  readonly store?: { readonly apart?: boolean; readonly how?: string };
  readonly carry?: { readonly size?: Size; readonly weight?: Quantity; readonly how?: string };
}
export interface InUsePart {
  readonly takes?: Duration;
  readonly do?: string;
  readonly uses: readonly UsedInUse[];
}
export interface UsedInUse {
  readonly material: string;
  readonly amount: Amount;
}

/** What the author says a batch costs and takes: checked against the computation. */
export interface StatedFigures {
  readonly for: number;
  readonly builders: number;
  readonly usedEach?: { readonly least: Money; readonly most: Money };
  /** For all models together. */
  readonly handsOn?: Duration;
  /** Build time in the reference week. */
  readonly readyIn?: Duration;
}
