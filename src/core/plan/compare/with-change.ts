import type { Workspace } from '../../model/workspace.ts';
import { dayNumber, isoDate } from '../../time/day.ts';
import type { DemandLine, PlanSettings } from '../demand.ts';
import { programWith } from '../schedule/program-with.ts';
import type { Change } from '../result.ts';

/** What a plan is made from. */
export interface Question {
  readonly workspace: Workspace;
  readonly demand: readonly DemandLine[];
  readonly settings: PlanSettings;
}

/** The same question with one thing changed. Earlier notice moves today with it. */
export function withChange(question: Question, change: Change): Question {
  const { workspace, demand, settings } = question;
  const set = (changed: Partial<PlanSettings>): Question => ({
    ...question,
    settings: { ...settings, ...changed },
  });
  switch (change.kind) {
    case 'builders':
      return set({ builders: change.count });
    case 'place':
    case 'tool':
      return {
        ...question,
        workspace: { ...workspace, program: programWith(workspace.program, change) },
      };
    case 'notice':
      return set(moved(settings, ['start'], -change.minutes));
    case 'later':
      return set(moved(settings, ['readyBy', 'goodUntil'], change.minutes));
    case 'fewer':
      return {
        ...question,
        demand: demand.map((line, i) => (i === change.line ? { ...line, wanted: change.wanted } : line)),
      };
  }
}

type Moment = 'start' | 'readyBy' | 'goodUntil';

function moved(settings: PlanSettings, names: readonly Moment[], minutes: number): Partial<PlanSettings> {
  const times = names.flatMap((name) => {
    const time = settings[name];
    return time === undefined ? [] : [[name, later(time, minutes)] as const];
  });
  const today = minutes < 0 ? later(`${settings.today}T00:00`, minutes).slice(0, 10) : settings.today;
  return { ...Object.fromEntries(times), today };
}

const day = 1440;

/** A wall clock `2026-11-30T09:00` so many minutes later by the clock on the wall. */
function later(time: string, minutes: number): string {
  const [date, hour, minute] = [time.slice(0, 10), Number(time.slice(11, 13)), Number(time.slice(14, 16))];
  const at = dayNumber(date) * day + hour * 60 + minute + minutes;
  const ofDay = at - Math.floor(at / day) * day;
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${isoDate(Math.floor(at / day))}T${two(Math.floor(ofDay / 60))}:${two(ofDay % 60)}`;
}
