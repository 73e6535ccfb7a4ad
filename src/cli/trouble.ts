import { Bug } from '../core/diagnostic.ts';
import { fill } from '../showing/text/fill.ts';
import { diskWords, outcomeWords } from '../words/outcomes.ts';
import type { ExitStatus, World } from './world.ts';

/** What stopped a command that should not have stopped: the disk, or a mistake of ours. Never a stack trace unasked. */
export function sayTrouble(trouble: unknown, world: World): ExitStatus {
  world.err.write(`${diskTrouble(trouble) ?? bugText(trouble)}\n`);
  if (world.args.includes('--trace')) world.err.write(traceOf(trouble));
  return 3;
}

function diskTrouble(trouble: unknown): string | undefined {
  if (!(trouble instanceof Error) || !('code' in trouble)) return undefined;
  const reason = diskWords[String(trouble.code)];
  const path = 'path' in trouble ? String(trouble.path) : outcomeWords.standardOutput;
  return reason && fill(outcomeWords.fileTrouble, { path, reason });
}

function bugText(trouble: unknown): string {
  const message = trouble instanceof Error ? trouble.message : String(trouble);
  return fill(outcomeWords.bug, { message: message.replaceAll(/\s+/g, ' ') });
}

function traceOf(trouble: unknown): string {
  const values = trouble instanceof Bug ? `${JSON.stringify(trouble.values)}\n` : '';
  return `${trouble instanceof Error ? (trouble.stack ?? '') : ''}\n${values}`;
}
