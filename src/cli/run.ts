import { nearName } from '../core/near-name.ts';
import { readArguments } from './arguments.ts';
import { check } from './check.ts';
import { listed } from '../showing/text/fill.ts';
import type { Command } from './command.ts';
import { type CommandName, commandNames } from './command-name.ts';
import { sayFaults, withNear } from './fault.ts';
import { helpOf, helpOfAll } from './help.ts';
import type { OptionName } from './options.ts';
import { plan } from './plan.ts';
import { print } from './print.ts';
import { publish } from './publish.ts';
import { sayTrouble } from './trouble.ts';
import { version } from './version.ts';
import type { ExitStatus, World } from './world.ts';

/** Every command but `help`, which speaks of them. */
const commands: Readonly<Record<Exclude<CommandName, 'help'>, Command>> = { check, plan, print, publish };

const ofAll: readonly OptionName[] = ['help', 'trace'];

/** Follows a call, and answers with the status to exit with. Nothing is ever thrown. */
export async function run(world: World): Promise<ExitStatus> {
  try {
    return await follow(world);
  } catch (trouble) {
    return sayTrouble(trouble, world);
  }
}

async function follow(world: World): Promise<ExitStatus> {
  const [first, ...rest] = world.args;
  if (first === undefined) return say(world, helpOfAll(), 2);
  if (first === '--version') return say(world, `${version}\n`, 0);
  if (['help', '--help', '-h'].includes(first)) return help(rest, world);
  const command = Object.hasOwn(commands, first) ? commands[first as keyof typeof commands] : undefined;
  return command ? obey(command, rest, world) : sayFaults(world, [unknownCommand(first)]);
}

async function obey(command: Command, args: readonly string[], world: World): Promise<ExitStatus> {
  const options = [...command.options, ...ofAll];
  const call = readArguments(command.name, args, options);
  if (call.values.help) return say(world, helpOf(command.name, options), 0);
  return call.faults.length > 0 ? sayFaults(world, call.faults, call.command) : command.run(call, world);
}

function help([name]: readonly string[], world: World): ExitStatus {
  if (name === undefined || name === 'help' || name.startsWith('-')) return say(world, helpOfAll(), 0);
  const command = Object.hasOwn(commands, name) ? commands[name as keyof typeof commands] : undefined;
  if (!command) return sayFaults(world, [unknownCommand(name)]);
  return say(world, helpOf(command.name, [...command.options, ...ofAll]), 0);
}

function unknownCommand(command: string) {
  return withNear('unknown-command', nearName(command, commandNames), {
    command,
    known: listed(commandNames),
  });
}

/** Help that was asked for goes to standard output; help that a call lacked, to standard error. */
function say(world: World, text: string, status: ExitStatus): ExitStatus {
  (status === 0 ? world.out : world.err).write(text);
  return status;
}
