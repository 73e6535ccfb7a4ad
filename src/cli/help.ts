import { indented, inColumns, type Column } from '../showing/terminal/columns.ts';
import { wrapped } from '../showing/text/wrapped.ts';
import { commandWords, helpWords, optionWords, type OptionWords } from '../words/command-line.ts';
import type { CommandName } from './command-name.ts';
import type { OptionName } from './options.ts';

const width = 80;
const columns: readonly Column[] = [{ align: 'left' }, { align: 'left', wraps: true }];

/** What the program can do: its commands, and where to read more. */
export function helpOfAll(): string {
  const rows = Object.values(commandWords).map(({ usage, does }) => [
    usage.replace('benchwright ', ''),
    does,
  ]);
  return paragraphs([
    wrapped(helpWords.about, width),
    indented([helpWords.usage]),
    [helpWords.commands, ...indented(inColumns(columns, rows, width - 2))],
    [helpWords.options, ...optionLines('help', ['help', 'version'])],
    wrapped(helpWords.workspace, width),
    wrapped(helpWords.exit, width),
    [helpWords.more],
  ]);
}

/** One command: what it does, its options, examples to type. */
export function helpOf(name: CommandName, options: readonly OptionName[]): string {
  const { usage, more, examples } = commandWords[name];
  return paragraphs([
    indented([usage]),
    ...more.map((text) => wrapped(text, width)),
    [helpWords.options, ...optionLines(name, options)],
    [
      helpWords.examples,
      ...examples.flatMap(([type, does]) => [...indented([type]), ...indented([does], 6)]),
    ],
  ]);
}

/** What an option means to a command. */
export function wordsOfOption(command: CommandName, name: keyof typeof optionWords): OptionWords {
  return commandWords[command].options?.[name] ?? optionWords[name];
}

function optionLines(command: CommandName, names: readonly (keyof typeof optionWords)[]): string[] {
  const rows = names.map((name) => optionRow(name, wordsOfOption(command, name)));
  return indented(inColumns(columns, rows, width - 2));
}

function optionRow(name: string, { takes, does }: OptionWords): string[] {
  return [takes === undefined ? `--${name}` : `--${name} ${takes}`, does];
}

function paragraphs(blocks: readonly (readonly string[])[]): string {
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}
