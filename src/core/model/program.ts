import type { ZoneTable } from '../time/zone.ts';
import type { Paper } from './paper.ts';
import type { Duration, IsoDate, Money, Rational } from './values.ts';

/** The people whose workspace this is: their money, hours, rooms and rules. Read from `program.yaml`. */
export interface Program {
  readonly name: string;
  /** BCP 47. */
  readonly locale: string;
  /** IANA name. */
  readonly timeZone: string;
  /** The offsets of that zone for about ten years, made by reading. */
  readonly zone: ZoneTable;
  /** ISO 4217. */
  readonly currency: string;
  /** Minor digits (ISO 4217) of every currency the workspace uses, put in by reading: `{ GBP: 2 }`. */
  readonly minorDigits: Readonly<Record<string, number>>;
  /** Units of `currency` for one unit of another, with the day of the rate. */
  readonly exchange: Readonly<Record<string, { readonly rate: Rational; readonly on: IsoDate }>>;
  readonly units: 'metric' | 'US' | 'both';
  readonly paper: Paper;
  readonly work: WorkingHours;
  /** At least 1. */
  readonly builders: number;
  /** Wage for one hour of one person. */
  readonly labour?: Money;
  /** Places by id. One that a guide names and this lacks is unlimited, with a warning. */
  readonly stations: Readonly<Record<string, number>>;
  /** Tools the program has. One that is not listed counts as many as the peak, with a warning. */
  readonly owned: Readonly<Record<string, number>>;
  readonly room: readonly RoomCondition[];
  /** As a fraction: `"1/10"`. */
  readonly spares: Rational;
  readonly suppliers: Readonly<Record<string, Supplier>>;
  readonly address?: string;
  readonly policy?: Policy;
  readonly sayAlso: Readonly<Record<string, readonly string[]>>;
}

/** The program's own policy, as far as it says what it is and whom to ask. */
export interface Policy {
  readonly contact?: string;
  readonly link?: string;
  readonly note?: string;
}

export type RoomCondition = 'cold' | 'damp' | 'hot';

export const weekdays = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;
export type Weekday = (typeof weekdays)[number];

/** When hands may work. Minutes count from midnight of the program's own clock. */
export interface WorkingHours {
  readonly days: readonly Weekday[];
  /** In order, not overlapping; `[[0, 1440]]` is round the clock. */
  readonly hours: readonly (readonly [from: number, to: number])[];
  readonly closed: readonly IsoDate[];
}

export interface Supplier {
  readonly name: string;
  readonly delivery?: Money;
  readonly freeOver?: Money;
  readonly arrivesIn?: Duration;
}
