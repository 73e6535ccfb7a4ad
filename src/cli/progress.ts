import { isPlain } from './ink.ts';
import type { World } from './world.ts';

/** What is going on, on one line of a terminal that the next one replaces; nothing on a pipe or in a file. */
export interface Progress {
  readonly say: (text: string) => void;
  /** Takes the line away. */
  readonly done: () => void;
}

const startOfLine = '\r\u001B[2K';

/** A terminal that is to stay plain gets lines that stand. */
export function progressOn({ err, environment }: World): Progress {
  if (!err.isTerminal) return { say: () => undefined, done: () => undefined };
  if (isPlain(environment)) return { say: (text) => err.write(`${text}\n`), done: () => undefined };
  return { say: (text) => err.write(startOfLine + text), done: () => err.write(startOfLine) };
}
