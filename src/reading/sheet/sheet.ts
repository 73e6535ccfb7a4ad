import type { Place } from '../../core/diagnostic.ts';
import type { Source } from '../text/source.ts';

/** What YAML's plainest schema gives: every scalar is the text that the author wrote, `13:00`, `0012`, `4.10`. */
export type Raw = string | RawList | RawMap;
export type RawList = readonly Raw[];
export interface RawMap {
  readonly [key: string]: Raw;
}

/** Keys and indexes from the top of a file down to a value, as the author wrote them. */
export type Path = readonly (string | number)[];

/** The front matter of one file (or a whole `.yaml` file) as plain values, and the place of each. */
export interface Sheet {
  readonly source: Source;
  readonly values: RawMap;
  /** Whether something of it was reported already; its other values can be read all the same. */
  readonly faulty: boolean;
  /** The value at a path, or the nearest written one above it. */
  valueAt(path: Path): Place;
  /** The key at a path; of a list's item the value. */
  keyAt(path: Path): Place;
}

/** The text of YAML inside a file: `offset` is where it begins. */
export interface YamlText {
  readonly text: string;
  readonly offset: number;
}

/** A stretch of the YAML text as a place of the file. */
export type Spot = (from: number, to: number) => Place;
