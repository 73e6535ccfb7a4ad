import { parseArgs } from 'node:util';
import { nearName } from '../core/near-name.ts';
import { wordsOfOption } from './help.ts';
import type { CommandName } from './command-name.ts';
import type { Fault } from './fault.ts';
import { fault, withNear } from './fault.ts';
import type { OptionName, ValueName, Values } from './options.ts';
import { flags, readerOf, repeatable } from './options.ts';

/** A call taken apart: its command, what its options say, the words that are none, and all that is wrong with it. */
export interface Call {
  readonly command: CommandName;
  readonly values: Values;
  readonly words: readonly string[];
  readonly faults: readonly Fault[];
}

interface OptionToken {
  readonly name: string;
  readonly rawName: string;
  readonly value: string | undefined;
  readonly inlineValue: boolean | undefined;
}

/**
 * The arguments of a command, read by the options it knows. Options and words may stand in any order; after `--` all
 * is words.
 */
export function readArguments(
  command: CommandName,
  args: readonly string[],
  known: readonly OptionName[],
): Call {
  const options = Object.fromEntries(
    known.map((name) => [name, { type: typeOf(name), ...shortOf(name) }] as const),
  );
  const { tokens } = parseArgs({
    args: [...joinedShares(args)],
    options,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const given = inOne(tokens.filter((token) => token.kind === 'option') as readonly OptionToken[]);
  const read = given.map((token) => readOption(command, token, known));
  return {
    command,
    values: Object.fromEntries(read.flatMap(({ value }) => value ?? [])) as Values,
    words: tokens.flatMap((token) => (token.kind === 'positional' ? [token.value] : [])),
    faults: [...read.flatMap(({ found }) => found ?? []), ...repeated(given)],
  };
}

/** `--spares 10 %` comes as two words from a shell; the sign belongs to the number before it. */
function joinedShares(args: readonly string[]): readonly string[] {
  return args.flatMap((word, index) => {
    if (word === '%' && index > 0) return [];
    return args[index + 1] === '%' ? [`${word} %`] : [word];
  });
}

/** Options that may stand several times, as one each: `--people trainees=20 --people seniors=2`. */
function inOne(given: readonly OptionToken[]): readonly OptionToken[] {
  return given.flatMap((token, index) => {
    const same = given.filter(({ name }) => name === token.name);
    if (same.length === 1 || !repeatable.some((name) => name === token.name)) return [token];
    if (given.findIndex(({ name }) => name === token.name) < index) return [];
    const values = same.map(({ value }) => value);
    return [{ ...token, value: values.includes(undefined) ? undefined : values.join(',') }];
  });
}

function typeOf(name: OptionName): 'string' | 'boolean' {
  return isFlag(name) ? 'boolean' : 'string';
}

function isFlag(name: OptionName): boolean {
  return flags.some((flag) => flag === name);
}

function shortOf(name: OptionName) {
  return name === 'help' ? { short: 'h' } : {};
}

/** One option as a pair for the values, or what is wrong with it. */
function readOption(
  command: CommandName,
  { name, rawName: option, value, inlineValue }: OptionToken,
  known: readonly OptionName[],
): { readonly value?: readonly [readonly [string, unknown]]; readonly found?: Fault } {
  if (!isKnown(name, known)) return { found: unknownOption(command, name, option, known) };
  if (isFlag(name)) {
    return value === undefined
      ? { value: [[name, true]] }
      : { found: fault('option-takes-nothing', { option, value }) };
  }
  const wants = wordsOfOption(command, name as ValueName).wants ?? '';
  const isMissing = value === undefined || (!inlineValue && /^--?[a-z]/.test(value));
  if (isMissing) return { found: fault('option-without-value', { option, wants }) };
  const meaning = readerOf(command, name as ValueName)(value);
  return meaning === undefined
    ? { found: fault('option-value', { option, wants, value }) }
    : { value: [[name, meaning]] };
}

function isKnown(name: string, known: readonly OptionName[]): name is OptionName {
  return known.some((one) => one === name);
}

function unknownOption(command: string, name: string, option: string, known: readonly OptionName[]): Fault {
  const near = nearName(name, known);
  return withNear('unknown-option', near && `--${near}`, { command, option });
}

function repeated(given: readonly OptionToken[]): Fault[] {
  const names = given.map(({ name }) => name);
  const twice = new Set(names.filter((name, index) => names.indexOf(name) !== index));
  return [...twice].map((name) => fault('option-twice', { option: `--${name}` }));
}
