import type { Workspace } from '../../core/model/workspace.ts';
import type { PlannedLine, PlannedSchedule } from '../../core/plan/result.ts';
import { openStretches, referenceWeek } from '../../core/time/working-hours.ts';
import { lineName, stepName, stepNumber } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import type { ShownStrip } from '../shown/shown-schedule.ts';
import { shown } from '../shown/shown.ts';
import { fill } from '../text/fill.ts';
import { planWords } from '../../words/plan.ts';
import { type Clock, dayOf, showDay, showTime } from '../text/times.ts';

type Strip = ShownStrip;
type Stretch = readonly [from: number, to: number];

/**
 * The schedule as a picture: places in thousandths of its width. Closed hours are drawn narrow, so that a short
 * morning's work is still seen beside a night:
 *
 *     |=====--|--==---------|closed|=|      = hands-on   - wait
 */
export function showStrip(
  key: string,
  lines: readonly PlannedLine[],
  schedule: PlannedSchedule,
  clock: Clock,
  workspace: Workspace,
): Strip {
  const span: Stretch = [schedule.firstHandsOn, Math.max(schedule.ready, schedule.firstHandsOn + 1)];
  const closed = closedStretches(span, clock, workspace);
  const place = scaleOf(span, closed);
  return {
    rows: stripRows(`${key}.rows`, lines, schedule, place),
    closed: closed.map(([from, to]) => ({ from: place(from), to: place(to) })),
    ticks: ticksOf(`${key}.ticks`, span, closed, clock, place),
  };
}

function stripRows(
  key: string,
  lines: readonly PlannedLine[],
  { jobs, chain }: PlannedSchedule,
  place: Place,
): Strip['rows'] {
  const deciding = new Set(chain.map(({ job }) => jobs[job]));
  const rows = lines.flatMap((line, index) => line.at.steps.map(({ id }) => ({ line: index, step: id })));
  return rows.map(({ line, step }, i) => {
    const own = jobs.filter((job) => job.line === line && job.step === step);
    const heading = stepName(lines[line]!.at, step);
    const label =
      lines.length === 1
        ? heading
        : fill(planWords.schedule.ofGuide, { guide: lineName(lines[line]!), what: heading });
    const handsOn = own.flatMap((job): readonly Stretch[] => job.stretches ?? [[job.start, job.end]]);
    const waits = own.map(({ end, waitEnd }): Stretch => [end, waitEnd]);
    const bars = [...drawn('hands-on', handsOn, place), ...drawn('wait', waits, place)];
    return {
      line,
      step,
      number: shown(`${key}[${i}].number`, showCount(stepNumber(lines[line]!.at, step))),
      label: shown(`${key}[${i}].label`, label),
      bars: bars.sort((a, b) => a.from - b.from),
      decides: joined(
        own.filter((job) => deciding.has(job)).map(({ start, waitEnd }) => [start, waitEnd]),
      ).map(([from, to]) => ({ from: place(from), to: place(to) })),
    };
  });
}

function drawn(
  kind: 'hands-on' | 'wait',
  stretches: readonly Stretch[],
  place: Place,
): Strip['rows'][number]['bars'][number][] {
  return joined(stretches).map(([from, to]) => ({ kind, from: place(from), to: place(to) }));
}

/** Stretches in order, those that touch or overlap made one. */
function joined(stretches: readonly Stretch[]): readonly Stretch[] {
  const inOrder = stretches.filter(([from, to]) => to > from).sort((a, b) => a[0] - b[0]);
  return inOrder.reduce<Stretch[]>((all, [from, to]) => {
    const last = all.at(-1);
    if (!last || last[1] < from) return [...all, [from, to]];
    return [...all.slice(0, -1), [last[0], Math.max(last[1], to)]];
  }, []);
}

/** Where the working hours are closed within a span. */
function closedStretches([from, to]: Stretch, clock: Clock, { program }: Workspace): readonly Stretch[] {
  const inside = openWithin([from, to], clock, program).map(([a, b]): Stretch => [
    Math.max(a, from),
    Math.min(b, to),
  ]);
  const open = joined(inside);
  const edges = [from, ...open.flat(), to];
  const gaps = edges.flatMap((edge, i): Stretch[] => (i % 2 === 0 ? [[edge, edges[i + 1]!]] : []));
  return gaps.filter(([a, b]) => b > a);
}

function openWithin(
  [from, to]: Stretch,
  clock: Clock,
  { work, zone }: Workspace['program'],
): readonly Stretch[] {
  if (clock.kind === 'dated') {
    const first = dayOf(from, clock) - 1;
    return openStretches(work, first, dayOf(to, clock) - first + 2, zone);
  }
  const { open, every = weekMinutes } = referenceWeek(work);
  const weeks = Array.from({ length: Math.floor(to / every) + 1 }, (_, week) => week * every);
  return weeks.flatMap((start) => open.map(([a, b]): Stretch => [start + a, start + b]));
}
const weekMinutes = 10080;

/** From a minute to its place in thousandths. */
type Place = (minute: number) => number;

function scaleOf([from, to]: Stretch, closed: readonly Stretch[]): Place {
  const widthTo = (minute: number): number =>
    minute - from - closed.reduce((saved, gap) => saved + savedBy(gap, minute), 0);
  const whole = widthTo(to);
  return (minute) => Math.round((1000 * widthTo(Math.min(Math.max(minute, from), to))) / whole);
}

/** Minutes of a closed stretch up to a moment that are not drawn: all but an hour and a 24th of it. */
function savedBy([from, to]: Stretch, minute: number): number {
  const share = Math.max(0, Math.min(minute, to) - from) / (to - from);
  return share * Math.max(0, to - from - 60 - (to - from) / 24);
}

/** Days where they begin on the picture, and hours between them, as many as have room. */
function ticksOf(
  key: string,
  [from, to]: Stretch,
  closed: readonly Stretch[],
  clock: Clock,
  place: Place,
): Strip['ticks'] {
  const starts = [from, ...closed.map(([, end]) => end).filter((end) => end < to)];
  const days = starts.filter((start, i) => i === 0 || dayOf(start, clock) !== dayOf(starts[i - 1]!, clock));
  const hours = hoursOf([from, to], closed, place).filter((hour) =>
    days.every((day) => Math.abs(place(hour) - place(day)) >= roomForLabel),
  );
  const ticks = [
    ...days.map((minute) => ({ minute, day: true, text: showDay(minute, clock) })),
    ...hours.map((minute) => ({ minute, day: false, text: showTime(minute, clock) })),
  ].sort((a, b) => a.minute - b.minute);
  return ticks.map(({ minute, day, text }, i) => ({
    at: place(minute),
    day,
    label: shown(`${key}[${i}].label`, text),
  }));
}

/** Thousandths that a label of an hour needs. */
const roomForLabel = 70;

/** Full hours in open time, at the finest of some distances at which their labels have room. */
function hoursOf([from, to]: Stretch, closed: readonly Stretch[], place: Place): readonly number[] {
  const isOpen = (minute: number): boolean => closed.every(([a, b]) => minute < a || minute >= b);
  for (const every of [15, 30, 60, 120, 240, 480, 720]) {
    const first = Math.ceil(from / every) * every;
    const count = Math.max(0, Math.ceil((to - first) / every));
    const hours = Array.from({ length: count }, (_, i) => first + i * every).filter(isOpen);
    const apart = hours.every((hour, i) => i === 0 || place(hour) - place(hours[i - 1]!) >= roomForLabel);
    if (apart) return hours;
  }
  return [];
}
