import type { Workspace } from '../../core/model/workspace.ts';
import type { Plan, PlannedSchedule } from '../../core/plan/result.ts';
import { planWords } from '../../words/plan.ts';
import { scheduleWords } from '../../words/schedule.ts';
import { counted, fill } from '../text/fill.ts';
import { lineAmong } from '../text/names.ts';
import { clockOf, planClock } from '../text/plan-clock.ts';
import { showChain } from './show-chain.ts';
import { dayLists } from './show-days.ts';
import { showHelps } from './show-helps.ts';
import { showLoads } from './show-loads.ts';
import { noScheduleText } from './show-no-schedule.ts';
import { isSayable, showModelsReady } from './show-ready.ts';
import { showStrip } from './show-strip.ts';
import type { ShownSchedule } from '../shown/shown-schedule.ts';
import { type Shown, shown } from '../shown/shown.ts';
import { type Clock, showMinutes, showMoment } from '../text/times.ts';

/** Who does what when; or, where there is no schedule, why not, and what would help. */
export function showSchedule(key: string, plan: Plan, workspace: Workspace): ShownSchedule {
  const { schedule, lines } = plan;
  if ('none' in schedule) {
    return {
      ...empty(key),
      none: shown(`${key}.none`, noScheduleText(schedule.none, planClock(plan, workspace), workspace)),
      helps: showHelps(`${key}.helps`, schedule.none, plan, workspace),
    };
  }
  const clock = clockOf(schedule, workspace);
  return {
    none: shown(`${key}.none`, ''),
    helps: [],
    says: shown(`${key}.says`, saysText(schedule, workspace)),
    backwards: shown(`${key}.backwards`, backwardsText(schedule, clock)),
    buildTime: shown(`${key}.buildTime`, showMinutes(schedule.buildTime)),
    ready: schedule.lines.map((line, i) => ({
      of: shown(`${key}.ready[${i}].of`, lineAmong(lines, i)),
      says: shown(`${key}.ready[${i}].says`, readyText(line, clock)),
    })),
    bound: shown(`${key}.bound`, boundText(schedule)),
    models: showModelsReady(`${key}.models`, lines, schedule, clock),
    decides: showChain(`${key}.decides`, { lines, schedule, clock, workspace }),
    loads: showLoads(`${key}.loads`, schedule, workspace),
    days: dayLists(`${key}.days`, lines, schedule, clock),
    strip: showStrip(`${key}.strip`, lines, schedule, clock, workspace),
  };
}

function empty(key: string): Omit<ShownSchedule, 'none' | 'helps'> {
  const nothing = (part: string): Shown => shown(`${key}.${part}`, '');
  return {
    says: nothing('says'),
    backwards: nothing('backwards'),
    buildTime: nothing('buildTime'),
    ready: [],
    bound: nothing('bound'),
    models: [],
    decides: [],
    loads: [],
    days: [],
    strip: { rows: [], closed: [], ticks: [] },
  };
}

function saysText({ clock, jobs }: PlannedSchedule, { program }: Workspace): string {
  const builders = counted(Math.max(1, ...jobs.flatMap((job) => job.builders)), 'builder');
  return clock === 'dated'
    ? fill(planWords.schedule.dated, { builders, zone: program.timeZone })
    : fill(planWords.schedule.referenceWeek, { builders });
}

function backwardsText({ readyBy, firstHandsOn }: PlannedSchedule, clock: Clock): string {
  if (readyBy === undefined) return '';
  return fill(scheduleWords.backwards, {
    by: showMoment(readyBy, clock),
    start: showMoment(firstHandsOn, clock),
  });
}

function readyText({ ready, useBy }: PlannedSchedule['lines'][number], clock: Clock): string {
  const time = showMoment(ready, clock);
  return useBy === undefined || !isSayable(useBy, ready, clock)
    ? fill(planWords.schedule.ready, { time })
    : fill(planWords.schedule.readyUseBy, { time, until: showMoment(useBy, clock) });
}

/** How near the schedule is to the shortest that could exist. */
function boundText({ optimal, makespan, lowerBound }: PlannedSchedule): string {
  const gap = makespan - lowerBound;
  return optimal || gap <= 0
    ? planWords.schedule.shortest
    : fill(planWords.schedule.shorter, { gap: showMinutes(gap) });
}
