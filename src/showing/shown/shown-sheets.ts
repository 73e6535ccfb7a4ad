import type { Shown } from './shown.ts';

/** What to order where, as finished text. */
export interface ShownShoppingList {
  readonly suppliers: readonly ShownSupplier[];
  /** Bought nowhere: taken from stock, free, or of which no pack is known. */
  readonly others: readonly ShownNotBought[];
  /** Tools of which the program has too few. */
  readonly tools: readonly ShownToolToBuy[];
  /** Packs and deliveries. */
  readonly total: Shown;
  readonly notes: readonly Shown[];
}

export interface ShownSupplier {
  readonly name: Shown;
  /** "order 3 working days before you start". Empty where nobody says how long it takes. */
  readonly when: Shown;
  readonly orders: readonly ShownOrder[];
  readonly goods: Shown;
  readonly delivery: Shown;
  /** Goods and delivery. */
  readonly sum: Shown;
}

/** Packs of one size and supplier. */
export interface ShownOrder {
  readonly material: string;
  readonly name: Shown;
  /** The specification. */
  readonly must: Shown;
  /** What of it can hurt. Empty where nothing is known to. */
  readonly dangers: Shown;
  /** "2 × 500 g" */
  readonly packs: Shown;
  /** The supplier's own number of the article. Empty where nobody wrote it down. */
  readonly code: Shown;
  /** Of one pack. */
  readonly price: Shown;
  readonly cost: Shown;
  readonly needed: Shown;
  /** "120 g from stock". Empty where none is. */
  readonly fromStock: Shown;
  readonly left: Shown;
  /** "with 1 × 250 g from a craft shop": other packs that make up the amount. Else empty. */
  readonly beside: Shown;
}

export interface ShownNotBought {
  readonly material: string;
  readonly name: Shown;
  readonly must: Shown;
  readonly dangers: Shown;
  readonly needed: Shown;
  /** "free", "from stock", "no pack known". */
  readonly why: Shown;
  readonly left: Shown;
}

export interface ShownToolToBuy {
  readonly id: string;
  readonly name: Shown;
  /** What of it can hurt. Empty where nothing is known to. */
  readonly dangers: Shown;
  readonly count: Shown;
  readonly price: Shown;
}

/** What is filed of a batch, as finished text: rooms to write in stand in the template. */
export interface ShownRecord {
  /** Materials whose lot is written down. */
  readonly lots: readonly {
    readonly id: string;
    readonly name: Shown;
    readonly must: Shown;
    readonly dangers: Shown;
  }[];
  /** Checks of each model, as many as fit side by side in each table. */
  readonly tables: readonly (readonly ShownReading[])[];
  readonly models: readonly Shown[];
  /** "of 12 made, 10 wanted". */
  readonly made: Shown;
}

export interface ShownReading {
  readonly id: string;
  readonly what: Shown;
  /** "13.5 mm to 18.5 mm", as its author wrote it where it is no target with limits. Empty of a question. */
  readonly accept: Shown;
}

/** One outline at 1:1, over as many tiles as it takes. */
export interface ShownPattern {
  readonly id: string;
  readonly name: Shown;
  /** "150 mm × 100 mm" */
  readonly size: Shown;
  /** "4 pieces of Coated stretch fabric". */
  readonly cut: Shown;
  /** "Do not turn: …". Empty where it may be turned. */
  readonly turn: Shown;
  /** The drawing's file as the guide names it; absent where the outline is the rectangle itself. */
  readonly file?: string;
  /** In millimetres. */
  readonly width: number;
  readonly height: number;
  readonly mayTurn: boolean;
  readonly columns: number;
  readonly rows: number;
  /** "A1–B3" */
  readonly range: Shown;
  readonly tiles: readonly ShownTile[];
}

/** What one sheet of paper shows of an outline. */
export interface ShownTile {
  /** "A2" */
  readonly name: Shown;
  /** "of A1–B3". */
  readonly of: Shown;
  readonly column: number;
  readonly row: number;
  /** Of its upper left corner, in millimetres. */
  readonly x: number;
  readonly y: number;
  /** Names of the tiles beyond its edges; absent where the outline ends. */
  readonly across?: Shown;
  readonly below?: Shown;
}

/** Pieces too large or too plain to print. */
export interface ShownUnprinted {
  readonly name: Shown;
  readonly size: Shown;
  readonly cut: Shown;
}

export interface ShownPatterns {
  readonly patterns: readonly ShownPattern[];
  readonly unprinted: readonly ShownUnprinted[];
  /** "No drawing with a size in mm is there for Blank, so …" Empty where each pattern has one. */
  readonly unsized: Shown;
}

/** What stands on the labels of one batch. */
export interface ShownLabels {
  /** "Ultrasound needle block, Deep vessel" */
  readonly title: Shown;
  readonly version: Shown;
  /** "Contains gelatin powder (animal tissue)". Empty where nothing is to be warned of. */
  readonly contains: Shown;
  /** What else is in it. */
  readonly madeOf: Shown;
  readonly trainingOnly: Shown;
  /** Where it is never put. */
  readonly apart: Shown;
  /** "Keeps 5 days (fridge, covered)". */
  readonly keeps: Shown;
  readonly models: readonly ShownLabel[];
}

export interface ShownLabel {
  /** "No. 3 of 12" */
  readonly number: Shown;
  /** Of a dated plan; else empty, with room to write. When it was made is always written by hand. */
  readonly ready: Shown;
  readonly useBy: Shown;
}
