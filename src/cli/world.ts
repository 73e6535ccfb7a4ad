import type { IsoDate } from '../core/model/values.ts';

/** All that a command may touch of the machine it runs on, so that tests can hand it another. */
export interface World {
  /** After the name of the program. */
  readonly args: readonly string[];
  /** The current folder. */
  readonly folder: string;
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** The day on the clock of this machine. */
  readonly systemDay: () => IsoDate;
  readonly out: Output;
  readonly err: Output;
}

export interface Output {
  readonly write: (text: string) => void;
  readonly isTerminal: boolean;
  /** Of the terminal, where it is one. */
  readonly columns?: number;
}

/** 0 fine; 1 the content has errors; 2 the call was wrong; 3 proven impossible, nothing found, disk full. */
export type ExitStatus = 0 | 1 | 2 | 3;
