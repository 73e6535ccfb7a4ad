import type { WorkingHours } from '../core/model/program.ts';
import type { PlannedSchedule } from '../core/plan/result.ts';
import { minutesOf } from '../core/time/minutes.ts';
import { addWorkingDays } from '../core/time/working-hours.ts';
import type { Check, Finding } from './check.ts';
import type { Context, GuideRead } from './lookup/context.ts';
import { timeText, written } from './lookup/written.ts';

/** A build time below the computed one, or more than a working day above it. */
export const statedBuildTimeWrong: Check = {
  code: 'stated-build-time-wrong',
  gravity: 'incomplete',
  needsPlan: true,
  find: (context) => context.guides.flatMap((read) => ofGuide(read, context)),
};

function ofGuide({ guide, place }: GuideRead, { workspace, planOf }: Context): readonly Finding[] {
  const stated = guide.states?.readyIn;
  const schedule = planOf(guide)?.schedule;
  if (!stated || !schedule || 'none' in schedule) return [];
  const [minutes, { buildTime }] = [minutesOf(stated), schedule];
  const isLong = minutes > buildTime + workingDayAfter(schedule, workspace.program.work);
  if (minutes >= buildTime && !isLong) return [];
  const at = place('states', 'ready-in');
  const { for: models, builders } = guide.states!;
  const facts = { guide: guide.title, stated: written(at), computed: timeText(buildTime) };
  return [
    {
      variant: isLong ? 'long' : undefined,
      places: [at],
      facts: { ...facts, models: String(models), builders: String(builders) },
    },
  ];
}

/** Minutes from when all is ready to the same time on the next working day. */
function workingDayAfter({ ready }: PlannedSchedule, work: WorkingHours): number {
  const opening = addWorkingDays(work, undefined, ready - (ready % 1440), 1);
  return Math.floor(opening / 1440) * 1440 - (ready - (ready % 1440));
}
