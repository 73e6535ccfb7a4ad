import type { Program } from '../../model/program.ts';
import type { Clock } from '../time/clock.ts';
import { stepsAfter } from './jobs.ts';
import { goodUntil } from '../time/keeping.ts';
import type { Line } from '../demand/line.ts';
import type { LineReady, PlannedJob } from '../result.ts';

/** When the models of each line are ready, and until when they are good at their longest `keeps`. */
export function linesReady(
  lines: readonly Line[],
  jobs: readonly PlannedJob[],
  program: Program,
  clock: Clock,
): readonly LineReady[] {
  const own = lines.map((): PlannedJob[] => []);
  for (const job of jobs) own[job.line]!.push(job);
  return lines.map((line, index) => {
    const useBy = keeperOf(line, program, clock);
    const readyAt = readyTimes(line, own[index]!, clock);
    const models = readyAt.map((ready) => ({ ready, ...useBy(ready) }));
    const first = readyAt.reduce((least, ready) => Math.min(least, ready), Infinity);
    const ready = readyAt.reduce((most, ready) => Math.max(most, ready), clock.start);
    return { ready, ...(models.length > 0 ? useBy(first) : {}), models };
  });
}

/** A model is ready when all its last runs, with their waits, are over; at once where it is past all of them. */
function readyTimes({ at, made }: Line, jobs: readonly PlannedJob[], { start }: Clock): number[] {
  const last = new Set(at.steps.filter((step) => stepsAfter(at, step).length === 0).map(({ id }) => id));
  const readyAt = new Array<number>(made).fill(start);
  for (const { step, models, waitEnd } of jobs) {
    if (!last.has(step)) continue;
    for (const model of models) readyAt[model - 1] = Math.max(readyAt[model - 1]!, waitEnd);
  }
  return readyAt;
}

/** Until when something is good that is ready at a minute; nothing where it keeps for ever. */
function keeperOf({ at }: Line, program: Program, clock: Clock): (ready: number) => { useBy?: number } {
  const known = new Map<number, { useBy?: number }>();
  return (ready) => {
    const found = known.get(ready);
    if (found) return found;
    const until = at.keeps.map((keeps) => goodUntil(ready, keeps.for, clock, program));
    const useBy = until.length > 0 ? { useBy: Math.max(...until) } : {};
    known.set(ready, useBy);
    return useBy;
  };
}
