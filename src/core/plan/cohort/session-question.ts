import type { Module } from '../../model/module.ts';
import type { Program } from '../../model/program.ts';
import type { IsoDate } from '../../model/values.ts';
import type { Workspace } from '../../model/workspace.ts';
import { isoDate } from '../../time/day.ts';
import { clockTime } from '../../time/iso-time.ts';
import type { DemandLine, PlanSettings } from '../demand.ts';
import { momentOf, wallMinute } from '../time/moment.ts';
import { type CohortPlan, type CohortSettings, cohortOf } from './cohort.ts';
import { demandOf } from './model-needs.ts';

/** What a session asks of a plan. */
export interface SessionQuestion {
  readonly cohort: CohortPlan;
  /** Empty where the session needs no models. */
  readonly demand: readonly DemandLine[];
  readonly settings: PlanSettings;
}

/** When a session is, as far as it is known: its day by the clock of the program, and the time that it begins. */
export interface SessionTime {
  readonly on?: IsoDate;
  /** Minutes from midnight. */
  readonly starts?: number;
  /** The same in minutes since 1970 in UTC. */
  readonly begins?: number;
}

const day = 1440;

/**
 * The models of a session as one demand: with the spares of the program unless others are set, and planned backwards
 * they are good until the session ends. It begins at `readyBy`; where that is midnight, some time on that day.
 *
 *     ready by 2026-12-04T13:00, booked 3 h   ->   good until 2026-12-04T16:00
 *     ready by 2026-12-04T00:00               ->   good until 2026-12-05T00:00
 */
export function sessionQuestion(
  module: Module,
  { guides, program }: Pick<Workspace, 'guides' | 'program'>,
  people: Omit<CohortSettings, 'spares'>,
  settings: PlanSettings,
): SessionQuestion {
  const spares = settings.spares ?? program.spares;
  const cohort = cohortOf(module, guides, { ...people, spares });
  const goodUntil = settings.goodUntil ?? endOf(settings.readyBy, cohort.agenda.booked);
  return {
    cohort,
    demand: demandOf(cohort.models),
    settings: { ...settings, spares, ...(goodUntil === undefined ? {} : { goodUntil }) },
  };
}

/** Whether it says at what time a session begins: midnight means some time on that day. */
export function saysTime(readyBy = ''): boolean {
  const wall = wallMinute(readyBy);
  return wall !== undefined && wall % day !== 0;
}

/**
 * What `readyBy` says of when a session is: no time where it means a whole day, or a time that no plan takes; nothing
 * where it is planned forwards.
 */
export function sessionTime(
  { readyBy = '', today }: Pick<PlanSettings, 'readyBy' | 'today'>,
  program: Program,
): SessionTime {
  const wall = wallMinute(readyBy);
  if (wall === undefined) return {};
  const on = isoDate(Math.floor(wall / day));
  const begins = saysTime(readyBy)
    ? momentOf({ option: '--ready-by', time: readyBy }, today, program)
    : undefined;
  return typeof begins === 'number' ? { on, starts: wall % day, begins } : { on };
}

function endOf(readyBy: string | undefined, booked: number): string | undefined {
  const wall = wallMinute(readyBy ?? '');
  if (wall === undefined) return undefined;
  const end = wall + (wall % day === 0 ? day : booked);
  return `${isoDate(Math.floor(end / day))}T${clockTime(end % day)}`;
}
