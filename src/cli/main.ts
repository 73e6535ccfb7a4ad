#!/usr/bin/env node
import { run } from './run.ts';
import { sayTrouble } from './trouble.ts';
import type { Output, World } from './world.ts';

const world: World = {
  args: process.argv.slice(2),
  folder: process.cwd(),
  environment: process.env,
  systemDay,
  out: outputTo(process.stdout),
  err: outputTo(process.stderr),
};

/** Somebody who reads only the first lines (`| head`) has closed the pipe: no fault of anybody. */
process.stdout.on('error', (trouble: NodeJS.ErrnoException) => {
  if (trouble.code !== 'EPIPE') process.exit(sayTrouble(trouble, world));
});

process.exitCode = await run(world);

function outputTo(stream: NodeJS.WriteStream): Output {
  const columns = stream.columns > 0 ? { columns: stream.columns } : {};
  return { write: (text) => void stream.write(text), isTerminal: Boolean(stream.isTTY), ...columns };
}

/** The day on the wall where this machine stands. */
function systemDay(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-');
}
