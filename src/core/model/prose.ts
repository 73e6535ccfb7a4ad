/** The prose of a guide as facts with positions, so that checks need no Markdown tree. */
export interface Prose {
  /** In the order of the file. */
  readonly sections: readonly Section[];
  readonly links: readonly ProseLink[];
  readonly images: readonly ProseImage[];
}

/** A heading of level 2 and all below it, or (first, with `heading: ''`) what stands before any. */
export interface Section {
  readonly heading: string;
  /** Lower-case letters, digits and hyphens, from the heading; unique in the guide. */
  readonly slug: string;
  /** The step whose heading this is. */
  readonly step?: string;
  /** Which of `### Be careful`, `### Right when`, `### If not` it has. */
  readonly has: readonly ('be-careful' | 'right-when' | 'if-not')[];
  readonly at: ProsePlace;
  /** Its words without the heading, a line for each paragraph, heading or cell. Of a module alone. */
  readonly text?: string;
}

/** `[300 mm x 200 mm of felt](material:felt)`: kind `material`, target `felt`. */
export interface ProseLink {
  readonly kind: LinkKind | 'other';
  /** After the colon; of an `other` link the whole address. */
  readonly target: string;
  readonly text: string;
  /** Index into `sections`. */
  readonly section: number;
  readonly at: ProsePlace;
}
export const linkKinds = ['caution', 'guide', 'material', 'module', 'set', 'step', 'tool'] as const;
export type LinkKind = (typeof linkKinds)[number];

export interface ProseImage {
  /** As written, relative to the guide's folder. */
  readonly file: string;
  readonly alt: string;
  /** Set by reading: a regular file inside the guide's folder. */
  readonly exists: boolean;
  readonly section: number;
  readonly at: ProsePlace;
}

/** Position in the guide's own file; the table of origins turns it into a `Place`. */
export interface ProsePlace {
  readonly line: number;
  readonly column: number;
  readonly length: number;
}
