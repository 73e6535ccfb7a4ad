/**
 * A finished text: the letters that command line, page and browser all print, with a stable key by which the browser
 * finds the place to replace. Templates place these; they never add or round.
 *
 * A key is the way to its text: `lines[0].materials[3].total`. What has an id may be named by it, so that it is found
 * at any settings: `lines[0].steps.pour.limit`.
 */
export interface Shown {
  readonly key: string;
  readonly text: string;
}

export function shown(key: string, text: string): Shown {
  return { key, text };
}
