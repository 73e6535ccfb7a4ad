import { fill } from '../showing/text/fill.ts';
import { wrapped } from '../showing/text/wrapped.ts';
import { callFaults, callWords } from '../words/command-line.ts';
import type { CommandName } from './command-name.ts';
import type { ExitStatus, World } from './world.ts';

/** Why a call cannot be followed. Never thrown. */
export interface Fault {
  readonly code: keyof typeof callFaults;
  readonly facts: Readonly<Record<string, string>>;
}

export function fault(code: Fault['code'], facts: Fault['facts'] = {}): Fault {
  return { code, facts };
}

/** The same, with the variant that names what is near where something is. */
export function withNear(
  code: Fault['code'] & `unknown-${'command' | 'guide' | 'level' | 'option' | 'part' | 'people'}`,
  near: string | undefined,
  facts: Fault['facts'],
): Fault {
  return near === undefined ? fault(code, facts) : fault(`${code}.near`, { ...facts, near });
}

const width = 80;

/** Says all that is wrong with a call, and where to read more. */
export function sayFaults(world: World, faults: readonly Fault[], command?: CommandName): ExitStatus {
  const texts = faults.map(({ code, facts }) => fill<string>(callFaults[code], facts));
  for (const line of texts.flatMap((text) => wrapped(text, width))) world.err.write(`${line}\n`);
  const more = command ? fill(callWords.seeHelp, { command }) : callWords.seeHelpAll;
  world.err.write(`${more}\n`);
  return 2;
}
