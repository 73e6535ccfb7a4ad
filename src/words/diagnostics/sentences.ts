/**
 * What is said of one problem. Facts stand in braces, `{text}`, in the author's own spelling.
 *
 * - `says`: one full sentence that stands alone and names the thing as the author named it.
 * - `why`: the rest, where the sentence does not explain itself.
 * - `write`: text to paste, so that pasting it makes the file right; three blanks or more part it from a remark, and
 *   `…` stands for what only the author knows. Several lines are several pastes, or one of several lines.
 * - `act`: what to do where nothing can be pasted. Stands under Write too.
 *
 * A key of a family is a code, or `code.variant`; a variant without a sentence of its own is said by the code's.
 */
export interface ProblemWords {
  readonly says: string;
  readonly why?: string;
  readonly write?: string;
  readonly act?: string;
}
export type ProblemFamily = Readonly<Record<string, ProblemWords>>;
