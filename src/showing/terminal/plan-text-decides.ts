import { planWords } from '../../words/plan.ts';
import { inColumns } from './columns.ts';
import { capital, fill } from '../text/fill.ts';
import { isSaid, left, lineNumber, right, wrapping } from './plan-text-parts.ts';
import type { ShownSchedule } from '../shown/shown-schedule.ts';
import { scheduleWords } from '../../words/schedule.ts';

/** The runs that decide the end, each with why it begins no earlier; of several lines each with its number. */
export function decidesLines(schedule: ShownSchedule, several: boolean, width: number): readonly string[] {
  const rows = schedule.decides.map(({ line, when, what, because }) => [
    when.text,
    several && line !== undefined ? lineNumber(line) : '',
    [what, because]
      .filter(isSaid)
      .map(({ text }) => text)
      .join(planWords.andAlso),
  ]);
  return inColumns([right, left, wrapping], rows, width);
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
  const { loads: words } = scheduleWords;
  const rows = loads
    .filter(({ kind, isScarce }) => kind === 'builders' || isScarce)
    .map(({ kind, name, peak, has, busy }) => [
      name.text,
      fill(words.line, { peak: peak.text, has: has.text }),
      fill(kind === 'builders' ? words.ofHours : words.ofTime, { busy: busy.text }),
    ]);
  return inColumns([wrapping, left, left], rows, width);
}
