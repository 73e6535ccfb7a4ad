/**
 * What is wrong, as data: a code, the places, and the facts of the case. The sentence is made later, in
 * `showing`, from the catalogue in `words`.
 */
export interface Diagnostic {
  /** States the bad thing, in kebab-case: `unit-mismatch`. Also the file, the test folder and the anchor in the manual. */
  readonly code: string;
  /** Chooses among wordings of one code where the cases differ: `unit-mismatch` + `area`. */
  readonly variant?: string;
  readonly severity: Severity;
  /** Where, most telling place first. Empty only where no file is at fault. */
  readonly places: readonly Place[];
  /** What the sentence needs, as text already in the author's own spelling. */
  readonly facts: Readonly<Record<string, string>>;
}

export type Severity = 'error' | 'warning' | 'note';

/** A stretch of one line of one file of the workspace. Lines and columns count from 1. */
export interface Place {
  /** Path below the workspace, with forward slashes. */
  readonly file: string;
  readonly line: number;
  readonly column: number;
  /** Characters to underline; at least 1. */
  readonly length: number;
  /** The whole source line, for the excerpt. */
  readonly text: string;
}

/** How a problem weighs by the guide's status; the one table of severities stands in `severityFor`. */
export type Gravity = 'stops' | 'incomplete' | 'calendar' | 'local' | 'doubtful' | 'note';

/**
 * How severe a problem is, by its gravity and by the status of the (strictest) guide it touches.
 *
 * - `stops`: stops computing, or is unsafe: always an error.
 * - `incomplete`: a warning in a draft, an error from `reviewed` on.
 * - `calendar`: only the calendar changed it (an old price, an overdue review): always a warning.
 * - `local`: only this program's own lists changed it (a place that it does not count): always a warning.
 * - `doubtful`: a rule of thumb, so it may be meant as it is: always a warning.
 * - `note`: never more than a note.
 */
export function severityFor(gravity: Gravity, status: 'draft' | 'reviewed' | 'approved'): Severity {
  switch (gravity) {
    case 'stops':
      return 'error';
    case 'incomplete':
      return status === 'draft' ? 'warning' : 'error';
    case 'calendar':
    case 'local':
    case 'doubtful':
      return 'warning';
    case 'note':
      return 'note';
  }
}

/** Our own fault, never the author's: thrown with the values that show it. */
export class Bug extends Error {
  readonly values: Readonly<Record<string, unknown>>;
  constructor(message: string, values: Readonly<Record<string, unknown>> = {}) {
    super(message);
    this.name = 'Bug';
    this.values = values;
  }
}
