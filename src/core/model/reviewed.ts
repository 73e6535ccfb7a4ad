import type { IsoDate } from './values.ts';

export const reviewStatuses = ['draft', 'reviewed', 'approved'] as const;
export type ReviewStatus = (typeof reviewStatuses)[number];

/** What guides and modules have alike: what they are called, where they stand in review, what has changed. */
export interface Reviewed {
  readonly title: string;
  readonly status: ReviewStatus;
  readonly version?: string;
  readonly approved?: { readonly by?: string; readonly on?: IsoDate; readonly until?: IsoDate };
  /** SPDX. */
  readonly licence?: string;
  readonly summary?: string;
  readonly history: readonly Change[];
  readonly sources: readonly string[];
}

/** What a version changed. */
export interface Change {
  readonly version: string;
  readonly on?: IsoDate;
  readonly what: string;
}
