import type { Call } from './arguments.ts';
import type { CommandName } from './command-name.ts';
import type { OptionName } from './options.ts';
import type { ExitStatus, World } from './world.ts';

/** One command of the program. Its words stand in `words/command-line.ts` under its name. */
export interface Command {
  readonly name: CommandName;
  /** Beside `--help` and `--trace`, which every command has. */
  readonly options: readonly OptionName[];
  /** @param call  Without faults. */
  readonly run: (call: Call, world: World) => Promise<ExitStatus>;
}
