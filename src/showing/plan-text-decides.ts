import { planWords } from '../words/plan.ts';
import { inColumns } from './columns.ts';
import { capital, fill } from './fill.ts';
import { isSaid, left, right, wrapping } from './plan-text-parts.ts';
import type { ShownSchedule } from './shown-schedule.ts';
import { scheduleWords } from '../words/schedule.ts';

/** The runs that decide the end, each with why it begins no earlier. */
export function decidesLines({ decides }: ShownSchedule, width: number): readonly string[] {
  const rows = decides.map(({ when, what, because }) => [
    when.text,
    isSaid(because) ? `${what.text}${planWords.andAlso}${because.text}` : what.text,
  ]);
  return inColumns([right, wrapping], rows, width);
}

/** When each model is ready, where not all of a line are at once. */
export function readyLines({ models }: ShownSchedule, width: number): readonly string[] {
  const rows = models.map(({ models: which, ready, useBy }) => [
    capital(which.text),
    fill(scheduleWords.ready.says, { time: ready.text }),
    isSaid(useBy) ? fill(scheduleWords.ready.until, { time: useBy.text }) : '',
  ]);
  return inColumns([wrapping, wrapping, wrapping], rows, width);
}

/** Builders, and whatever else is scarce: the rest does not matter for the time. */
export function loadLines({ loads }: ShownSchedule, width: number): readonly string[] {
  const rows = loads
    .filter(({ kind, isScarce }) => kind === 'builders' || isScarce)
    .map(({ name, peak, has, busy }) => [
      name.text,
      fill(scheduleWords.loads.line, { peak: peak.text, has: has.text }),
      busy.text,
    ]);
  return inColumns([wrapping, left, right], rows, width);
}
