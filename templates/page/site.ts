import type { Policy } from '../../src/core/model/program.ts';
import type { pageWords } from '../../src/words/pages.ts';

export type PlaceId = Exclude<keyof typeof pageWords.places, 'search'>;

/** What every page of an edition shares. */
export interface Site {
  readonly program: string;
  /** BCP 47. */
  readonly language: string;
  /** Those pages that there are, by their path from the edition's folder. */
  readonly places: readonly { readonly id: PlaceId; readonly path: string }[];
  /** Who has the last word, and whom to ask. */
  readonly defers: string;
  readonly policy?: Policy;
}
