/**
 * The clock of a place for about ten years, as plain data: from each UTC minute on, the offset of the wall clock.
 * Made by reading (which has the zone database), taken as a value by core and browser (which have none).
 */
export interface ZoneTable {
  readonly zone: string;
  /** In order; minutes since 1970-01-01T00:00Z, and minutes to add to UTC for the wall clock. The first row is the start of the table. */
  readonly changes: readonly (readonly [utcMinute: number, offset: number])[];
  /** First UTC minute that the table no longer covers. */
  readonly until: number;
}
