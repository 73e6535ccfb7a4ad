import type { LineReady, PlannedLine, PlannedSchedule } from '../../core/plan/result.ts';
import { planWords } from '../../words/plan.ts';
import { scheduleWords } from '../../words/schedule.ts';
import { fill } from '../text/fill.ts';
import { modelsText } from '../text/model-lists.ts';
import { lineName } from '../text/names.ts';
import type { ShownReady } from '../shown/shown-schedule.ts';
import { shown } from '../shown/shown.ts';
import { type Clock, dayOf, showMoment, showMomentFrom } from '../text/times.ts';

type ReadyAt = LineReady['models'][number];

/** Models that are ready together, or on one day. */
interface Group {
  readonly models: readonly number[];
  readonly at: readonly ReadyAt[];
}

/** Models less than so many minutes apart are ready together. */
const apart = 60;
/** So many groups of a line are listed; of more, those of a day stand together. */
const groupsListed = 6;

/** When each model is ready and by when it is to be used. A line whose models are all ready at once has none. */
export function showModelsReady(
  key: string,
  lines: readonly PlannedLine[],
  schedule: PlannedSchedule,
  clock: Clock,
): readonly ShownReady[] {
  const rows = schedule.lines.flatMap((line, index) => {
    const groups = groupsOf(line.models, clock);
    return groups.length < 2 ? [] : groups.map((group) => ({ index, ...textsOf(group, clock) }));
  });
  return rows.map(({ index, models, ready, useBy }, i) => ({
    line: index,
    models: shown(
      `${key}[${i}].models`,
      lines.length === 1
        ? models
        : fill(planWords.schedule.ofGuide, { guide: lineName(lines[index]!), what: models }),
    ),
    ready: shown(`${key}[${i}].ready`, ready),
    useBy: shown(`${key}[${i}].useBy`, useBy),
  }));
}

function groupsOf(models: readonly ReadyAt[], clock: Clock): readonly Group[] {
  const together = grouped(models, firstOfRun(models.map(({ ready }) => ready)));
  return together.length <= groupsListed ? together : grouped(models, (ready) => dayOf(ready, clock));
}

/** The first of the moments that follow each other closely up to a moment. */
function firstOfRun(moments: readonly number[]): (moment: number) => number {
  const inOrder = [...new Set(moments)].sort((a, b) => a - b);
  const firsts = inOrder.filter((moment, i) => i === 0 || moment - inOrder[i - 1]! >= apart);
  return (moment) => firsts.findLast((first) => first <= moment)!;
}

/** In order of time. */
function grouped(models: readonly ReadyAt[], by: (ready: number) => number): readonly Group[] {
  const groups = new Map<number, { models: number[]; at: ReadyAt[] }>();
  models.forEach((at, i) => {
    const group = groups.get(by(at.ready)) ?? { models: [], at: [] };
    group.models.push(i + 1);
    group.at.push(at);
    groups.set(by(at.ready), group);
  });
  return [...groups.values()].sort((a, b) => firstOf(a.at) - firstOf(b.at));
}

const firstOf = (at: readonly ReadyAt[]): number => Math.min(...at.map(({ ready }) => ready));

function textsOf({ models, at }: Group, clock: Clock): Record<'models' | 'ready' | 'useBy', string> {
  const first = firstOf(at);
  const last = Math.max(...at.map(({ ready }) => ready));
  const until = Math.min(...at.map(({ useBy }) => useBy ?? Infinity));
  return {
    models: modelsText(models),
    ready:
      first === last
        ? showMoment(first, clock)
        : fill(scheduleWords.ready.between, {
            from: showMoment(first, clock),
            to: showMomentFrom(first, last, clock),
          }),
    useBy: isSayable(until, first, clock) ? showMoment(until, clock) : '',
  };
}

/** Beyond four weeks a day of the reference week says nothing: how long a model keeps says more. */
const farOff = 28 * 1440;

/** Whether the moment until which a model is good means something on this clock. */
export function isSayable(until: number, ready: number, { kind }: Clock): boolean {
  return until < Infinity && !(kind === 'reference-week' && until - ready > farOff);
}
