import { styleText } from 'node:util';
import type { Severity } from '../core/diagnostic.ts';
import type { Output, World } from './world.ts';

/** Colours for a terminal; on a pipe, in a file, or with NO_COLOR every text stays as it is. */
export interface Ink {
  readonly strong: (text: string) => string;
  readonly of: (severity: Severity, text: string) => string;
}

/** Whether to colour was decided here, of the output in question; Node would ask its own standard output. */
const always = { validateStream: false };
const colours = { error: 'red', warning: 'yellow', note: 'cyan' } as const;

/**
 * Whether a terminal is to have no control codes.
 *
 * @source NO_COLOR: no-color.org, set and not empty; TERM=dumb: common practice.
 */
export function isPlain(environment: World['environment']): boolean {
  return Boolean(environment['NO_COLOR']) || environment['TERM'] === 'dumb';
}

export function inkFor(output: Output, { environment }: World): Ink {
  if (!output.isTerminal || isPlain(environment)) return { strong: (text) => text, of: (_, text) => text };
  return {
    strong: (text) => styleText('bold', text, always),
    of: (severity, text) => styleText(colours[severity], text, always),
  };
}
