import type { Prose } from './prose.ts';
import type { Reviewed } from './reviewed.ts';
import type { Duration, IsoDate, Rational } from './values.ts';

/**
 * A teaching unit: what trainees will be able to do, how they get there, on which models, and how anybody can tell.
 * All of it JSON.
 */
export interface Module extends Reviewed {
  readonly id: string;
  /** Whom it is for, and what they have done before. */
  readonly audience?: string;
  /** Modules that come before. */
  readonly after: readonly string[];
  /** Why it is taught: what was found to be wanting. */
  readonly needs: readonly string[];
  readonly objectives: readonly Objective[];
  readonly activities: readonly Activity[];
  readonly prepare: readonly Preparation[];
  /** The most that trainees are promised to spend on preparing. */
  readonly promised?: Duration;
  readonly bring: readonly string[];
  readonly wear: readonly string[];
  readonly notices: Notices;
  readonly cohort: Cohort;
  readonly session?: Session;
  readonly stations: readonly Station[];
  readonly scoring?: Scoring;
  readonly surveys: readonly SurveyItem[];
  readonly selfCheck: readonly Question[];
  /** What an instructor asks when all is done. For staff. */
  readonly debrief: readonly string[];
  readonly pilot?: string;
  readonly prose: Prose;
}

/** @source Miller, The assessment of clinical skills, competence, performance (1990); the first three of four levels. */
export const showings = ['knows', 'knows-how', 'shows-how'] as const;

export interface Objective {
  readonly id: string;
  /** One observable act: "keep the needle tip in view until it enters the vessel". */
  readonly does: string;
  /** The condition or standard: "in 3 attempts of 4". */
  readonly standard?: string;
  readonly shownBy?: (typeof showings)[number];
  /** "by the end of the session". */
  readonly by?: string;
  /** Ids of stations and activities. */
  readonly practisedAt: readonly string[];
  /** Ids of items, ratings and questions. */
  readonly assessedBy: readonly string[];
}

/** Something that trainees do which is no station: a demonstration, a talk. */
export interface Activity {
  readonly id: string;
  readonly what: string;
}

export interface Preparation {
  readonly kind: 'read' | 'watch' | 'do';
  /** A text of the module, a file beside it, or words. */
  readonly what: string;
  readonly takes?: Duration;
  /** Of a film: its captions or its transcript, a file beside it. */
  readonly text?: string;
}

export interface Notices {
  /** How somebody who needs another way of taking part says so. */
  readonly accommodations?: string;
  readonly recording?: string;
  readonly privacy?: string;
}

/** The people of a session. */
export interface Cohort {
  /** Trainees to one instructor at most. */
  readonly ratio?: number;
  /** People in one group at most; the ratio where left out. */
  readonly group?: number;
  readonly people: readonly People[];
  readonly instructors?: number;
}

export const roles = ['trainees', 'raters', 'try-out', 'pilot'] as const;

export interface People {
  readonly id: string;
  readonly count: number;
  /** What they are there for; to train where left out. */
  readonly as: readonly (typeof roles)[number][];
}

export interface Session {
  readonly booked: Duration;
  readonly where?: string;
  readonly agenda: readonly AgendaItem[];
}

export interface AgendaItem {
  readonly id: string;
  readonly what?: string;
  /** How long, or all that is left of the booked time; absent where its stations say it. */
  readonly takes?: Duration | 'the rest';
  /** A circuit of these stations. */
  readonly stations: readonly string[];
  /** Survey items asked then: before or after. */
  readonly survey?: 'before' | 'after';
  /** The script: what is said or done, in words or by ids of the published list. */
  readonly script: readonly string[];
}

export interface Station {
  readonly id: string;
  readonly name?: string;
  /** Seats, or as many as the time asks for. */
  readonly seats: number | 'as needed';
  /** People at one seat. */
  readonly atOne: number;
  readonly takes: Duration;
  readonly changeOver: Duration;
  /** The least that each trainee is to have hands on. */
  readonly practice?: Duration;
  /** To set it up again between two groups. */
  readonly reset?: Duration;
  /** Whether an instructor leads it. */
  readonly led: boolean;
  readonly models: readonly ModelsAtStation[];
  readonly tools: readonly {
    readonly use: string;
    readonly count: number;
    readonly each: 'seat' | 'person' | 'station';
  }[];
  /** What those do who are not at it with their hands. */
  readonly meanwhile: readonly string[];
}

/**
 * How people share models: anybody on any model; all uses of a person on one model, which others may use after; a
 * model stays at its seat until it is worn; nobody shares.
 */
export const shares = ['mixed', 'whole', 'seat', 'own'] as const;
export type Share = (typeof shares)[number];

export interface ModelsAtStation {
  readonly guide: string;
  readonly level?: string;
  /** The version of the guide that the module was written for. */
  readonly version?: string;
  /** Uses that each person makes. */
  readonly uses: number;
  readonly share: Share;
  /** Models that nobody practises on. */
  readonly besides: Readonly<Partial<Record<(typeof besides)[number], number>>>;
}

export const besides = ['demonstration', 'pilot', 'assessment'] as const;

export interface Scoring {
  /** Time limit. */
  readonly limit?: Duration;
  readonly items: readonly ScoredItem[];
  /** What the weights of the items add up to. */
  readonly total?: Rational;
  readonly ratings: readonly RatingScale[];
  readonly penalties: readonly Penalty[];
  /** What raters agree on before they rate. For staff. */
  readonly raterNotes: readonly string[];
  /** How the pass mark was set; absent where nobody says, `none` where none is set. */
  readonly pass?: 'none' | PassMark;
}

export interface ScoredItem {
  readonly id: string;
  readonly says: string;
  readonly weight: Rational;
  /** Failing it fails all, whatever the total. */
  readonly critical: boolean;
  readonly objectives: readonly string[];
}

export interface RatingScale {
  readonly id: string;
  readonly says?: string;
  /** What each point means, by its number. */
  readonly anchors: Readonly<Record<string, string>>;
  readonly objectives: readonly string[];
}

export interface Penalty {
  readonly when: string;
  readonly adds: Duration;
  readonly atMost?: number;
}

export const passMethods = ['angoff', 'borderline-regression', 'contrasting-groups'] as const;

export interface PassMark {
  readonly method: (typeof passMethods)[number];
  /** Judges' data, a CSV beside the module. */
  readonly judges: string;
  /** Of borderline regression: the rating that is borderline; 2 where left out. */
  readonly borderline?: Rational;
  readonly on?: IsoDate;
  readonly by?: string;
  /** What that file says; absent where it is not there or could not be read. */
  readonly judged?: Judged;
}

/** What judges said, and of nobody who: shares from 0 to 1, points of the checklist. */
export type Judged =
  | {
      readonly method: 'angoff';
      /** The share expected of somebody who only just passes: judge by judge, of each item in the order of the scoring. */
      readonly shares: readonly (readonly Rational[])[];
    }
  | {
      readonly method: 'borderline-regression';
      readonly rated: readonly { readonly rating: Rational; readonly points: Rational }[];
    }
  | {
      readonly method: 'contrasting-groups';
      readonly people: readonly { readonly ready: boolean; readonly points: Rational }[];
    };

export interface SurveyItem {
  readonly id: string;
  readonly ask: string;
  /** What each point of the scale means, by its number; absent for an answer in words. */
  readonly scale?: Readonly<Record<string, string>>;
  readonly asked: readonly ('before' | 'after')[];
  /** Ids of people; all where left out. */
  readonly of: readonly string[];
}

/** A question that the trainee answers alone, with an answer that explains. */
export interface Question {
  readonly id?: string;
  readonly ask: string;
  readonly choices: readonly string[];
  /** Number of the right choice, from 1. */
  readonly right: number;
  readonly because: string;
  readonly objectives: readonly string[];
}
