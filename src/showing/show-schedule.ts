import type { Workspace } from '../core/model/workspace.ts';
import type { Plan, PlannedSchedule } from '../core/plan/result.ts';
import { planWords } from '../words/plan.ts';
import { counted, fill } from './fill.ts';
import { dayLists } from './show-days.ts';
import { noScheduleText } from './show-no-schedule.ts';
import { showStrip } from './show-strip.ts';
import { type Shown, type ShownSchedule, shown } from './shown.ts';
import { type Clock, showMinutes, showMoment } from './times.ts';

/** Who does what when; or, where there is no schedule, why not. */
export function showSchedule(key: string, plan: Plan, workspace: Workspace): ShownSchedule {
  const { schedule } = plan;
  if ('none' in schedule) {
    return { ...empty(key), none: shown(`${key}.none`, noScheduleText(schedule.none, workspace)) };
  }
  const clock = clockOf(schedule, workspace);
  return {
    none: shown(`${key}.none`, ''),
    says: shown(`${key}.says`, saysText(schedule, workspace)),
    buildTime: shown(`${key}.buildTime`, showMinutes(schedule.buildTime)),
    ready: schedule.lines.map((line, i) => shown(`${key}.ready[${i}]`, readyText(line, clock))),
    bound: shown(`${key}.bound`, boundText(schedule)),
    days: dayLists(`${key}.days`, plan.lines, schedule, clock),
    strip: showStrip(`${key}.strip`, plan.lines, schedule, clock, workspace),
  };
}

function empty(key: string): Omit<ShownSchedule, 'none'> {
  const nothing = (part: string): Shown => shown(`${key}.${part}`, '');
  return {
    says: nothing('says'),
    buildTime: nothing('buildTime'),
    ready: [],
    bound: nothing('bound'),
    days: [],
    strip: { rows: [], closed: [], ticks: [] },
  };
}

/** Days of the reference week count from its start; dates are those of the program's zone. */
export function clockOf({ clock, start }: PlannedSchedule, { program }: Workspace): Clock {
  return { kind: clock, start, zone: program.zone };
}

function saysText({ clock, jobs }: PlannedSchedule, { program }: Workspace): string {
  const builders = counted(Math.max(1, ...jobs.flatMap((job) => job.builders)), 'builder');
  return clock === 'dated'
    ? fill(planWords.schedule.dated, { builders, zone: program.timeZone })
    : fill(planWords.schedule.referenceWeek, { builders });
}

function readyText({ ready, useBy }: PlannedSchedule['lines'][number], clock: Clock): string {
  const time = showMoment(ready, clock);
  return useBy === undefined || (clock.kind === 'reference-week' && useBy - ready > farOff)
    ? fill(planWords.schedule.ready, { time })
    : fill(planWords.schedule.readyUseBy, { time, until: showMoment(useBy, clock) });
}

/** Beyond four weeks a day of the reference week says nothing: how long a model keeps says more. */
const farOff = 28 * 1440;

function boundText({ optimal, makespan, lowerBound }: PlannedSchedule): string {
  const gap = makespan - lowerBound;
  return optimal || gap <= 0
    ? planWords.schedule.shortest
    : fill(planWords.schedule.shorter, { gap: showMinutes(gap) });
}
