import type { ModelsAtStation } from '../../core/model/module.ts';
import type { sessionWords } from '../../words/session.ts';
import type { Shown } from '../shown/shown.ts';

/** A module's session as finished text: who is where when, and what stands ready. Keys begin with `session`. */
export interface ShownSession {
  /** The module's title. */
  readonly title: Shown;
  /** Booked time, beginning, place, instructors; those that are unsaid are left out. */
  readonly facts: readonly ShownSessionFact[];
  readonly people: readonly ShownPeople[];
  readonly agenda: readonly ShownAgendaItem[];
  readonly circuits: readonly ShownCircuit[];
  readonly stations: readonly ShownStation[];
  readonly models: readonly ShownModelNeed[];
  readonly instructors: {
    /** "3 there, 3 needed". */
    readonly says: Shown;
    /** Why so many: "1 for at most 6 trainees", "3 stations led". */
    readonly because: readonly Shown[];
  };
  readonly tools: readonly { readonly id: string; readonly name: Shown; readonly count: Shown }[];
  /** When to begin to set up, and how long the models take afterwards; empty where no guide says. */
  readonly care: { readonly setUp: Shown; readonly after: Shown };
  /** What does not fit or is not known, a sentence each; empty where all is well. */
  readonly notes: readonly Shown[];
}

export interface ShownSessionFact {
  readonly id: keyof typeof sessionWords.facts;
  readonly name: Shown;
  readonly value: Shown;
}

export interface ShownPeople {
  readonly id: string;
  readonly count: number;
  /** "18 trainees in 4 groups: 5, 5, 4 and 4". */
  readonly says: Shown;
  /** "practise", "rate and try the models out". */
  readonly as: Shown;
}

export interface ShownAgendaItem {
  readonly id: string;
  /** "0:15–0:30"; by the clock where the session's start is known. */
  readonly time: Shown;
  readonly takes: Shown;
  readonly what: Shown;
  /** What is said or done. */
  readonly script: readonly Shown[];
  readonly survey?: 'before' | 'after';
  /** It is a circuit: `circuits` has one of this id. */
  readonly isCircuit: boolean;
}

/** Groups that go round, twice over: by round for the wall, and by group for the hand. */
export interface ShownCircuit {
  /** The agenda item's. */
  readonly id: string;
  readonly name: Shown;
  /** "4 rounds of 25 min, 5 min to change: 1 h 55 min in all." */
  readonly says: Shown;
  /** Heads of the grid: the stations; then a place to rest, where groups are more than stations. */
  readonly columns: readonly { readonly id: string; readonly name: Shown; readonly isRest: boolean }[];
  readonly rounds: readonly {
    /** "Round 1" */
    readonly name: Shown;
    readonly time: Shown;
    /** One for each column: "Group 1", "Group 3 and Group 4" at rest, or a dash. */
    readonly cells: readonly Shown[];
  }[];
  readonly groups: readonly {
    /** "Group 1" */
    readonly name: Shown;
    /** "5 trainees" */
    readonly size: Shown;
    /** One for each round, in its order. */
    readonly places: readonly {
      readonly time: Shown;
      readonly place: Shown;
      readonly isRest: boolean;
    }[];
  }[];
}

export interface ShownStation {
  readonly id: string;
  readonly name: Shown;
  /** "3 seats, 2 people at each". */
  readonly seats: Shown;
  /** "25 min, 5 min to change". */
  readonly takes: Shown;
  /** "3 min to set it up again", as the station says or the guides of its models. Empty where unsaid. */
  readonly reset: Shown;
  readonly led: boolean;
  readonly ledSays: Shown;
  readonly models: readonly {
    readonly guide: string;
    readonly level?: string;
    /** "Ultrasound needle block, Deep vessel: 1 use each; anybody on any model". */
    readonly says: Shown;
  }[];
  /** "1 × Scissors". */
  readonly tools: readonly Shown[];
  /** What those do who are not at it with their hands. */
  readonly meanwhile: readonly Shown[];
}

/** Models of one guide and level that stand ready. */
export interface ShownModelNeed {
  readonly guide: string;
  readonly level?: string;
  /** "Ultrasound needle block, Deep vessel". */
  readonly name: Shown;
  /** Spares included: "9 models". */
  readonly count: Shown;
  /** "6 to practise on, 1 for the demonstration and 2 spares". */
  readonly of: Shown;
  /** "18 uses in all; anybody on any model". */
  readonly share: Shown;
  /** Parts that wear sooner, spares included: "Skin: 7 in all, 4 of them on the models". */
  readonly parts: readonly Shown[];
  /** All of them in one text; empty where none wears sooner. */
  readonly wears: Shown;
}

export type Besides = keyof ModelsAtStation['besides'];
