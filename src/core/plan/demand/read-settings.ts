import type { Diagnostic } from '../../diagnostic.ts';
import type { Program } from '../../model/program.ts';
import { type Exact, exact, one, zero } from '../../quantity/exact.ts';
import { type Clock, datedClock, referenceClock } from '../time/clock.ts';
import type { PlanSettings } from '../demand.ts';
import { midnightOf, momentOf } from '../time/moment.ts';
import { refusal } from '../refusal.ts';

/** Settings with everything said. */
export interface Settings {
  readonly clock: Clock;
  /** Absent in a plan that runs forwards. */
  readonly goal?: Goal;
  readonly builders: number;
  /** Share of spares to add; zero for none. */
  readonly spares: Exact;
  readonly stock: PlanSettings['stock'];
  readonly finished: NonNullable<PlanSettings['finished']>;
  /** How many times the usual search for a schedule. */
  readonly effort: Exact;
}

/** What a plan runs backwards from, on its clock. */
export interface Goal {
  /** By when all is ready; the margin is taken off. */
  readonly readyBy: number;
  /** Until when all must be good. */
  readonly goodUntil: number;
}

/** So many builders at most; more people than that share no bench. */
const buildersUpTo = 1_000;
/** A search of more than that would take hours. */
const effortUpTo = 1_000;
/** A year. */
const marginUpTo = 525_600;

export function readSettings(
  program: Program,
  settings: PlanSettings,
): Settings | { readonly refused: readonly Diagnostic[] } {
  const { builders = program.builders, spares, stock, finished = [], effort = '1' } = settings;
  const times = timesOf(program, settings);
  const refused = [
    ...('refused' in times ? times.refused : []),
    ...(isFrom1To(buildersUpTo, builders) ? [] : [tooMany('builders', String(builders), buildersUpTo)]),
    ...(isEffort(effort) ? [] : [tooMany('effort', effort, effortUpTo)]),
  ];
  if ('refused' in times || refused.length > 0) return { refused };
  const share = spares === undefined ? zero : exact(spares);
  return { ...times, builders, spares: share, stock, finished, effort: exact(effort) };
}

function tooMany(what: 'builders' | 'effort' | 'margin', asked: string, most: number): Diagnostic {
  return refusal(`${what}-out-of-range`, { [what]: asked, most: String(most) });
}

function isFrom1To(most: number, count: number): boolean {
  return Number.isInteger(count) && count >= 1 && count <= most;
}

function isEffort(effort: string): boolean {
  if (!/^\d{1,9}(\/0*[1-9]\d{0,8})?$/.test(effort)) return false;
  const times = exact(effort);
  return times.compare(zero) > 0 && times.compare(one.mul(effortUpTo)) <= 0;
}

type Times = Pick<Settings, 'clock' | 'goal'> | { readonly refused: readonly Diagnostic[] };

/** Dated where a start, or a time to be ready by, is set; else the reference week. */
function timesOf(program: Program, settings: PlanSettings): Times {
  const { start, readyBy, today } = settings;
  if (readyBy !== undefined) return backwards(program, settings, readyBy);
  const loose = (['goodUntil', 'margin'] as const).find((name) => settings[name] !== undefined);
  if (loose) return { refused: [refusal('ready-by-missing', {}, loose)] };
  if (start === undefined) return { clock: referenceClock(program) };
  const from = momentOf({ option: '--start', time: start }, today, program);
  return typeof from === 'number' ? { clock: datedClock(program, from) } : { refused: [from] };
}

/** The clock begins with today, before which nothing can be done. */
function backwards(program: Program, settings: PlanSettings, readyBy: string): Times {
  const { start, margin = 0, goodUntil = readyBy, today } = settings;
  const ready = momentOf({ option: '--ready-by', time: readyBy }, today, program);
  const until = momentOf({ option: '--good-until', time: goodUntil }, today, program);
  const isMargin = margin === 0 || isFrom1To(marginUpTo, margin);
  const refused = [
    ...(start === undefined ? [] : [refusal('start-and-ready-by', { start, readyBy })]),
    ...(isMargin ? [] : [tooMany('margin', String(margin), marginUpTo)]),
  ];
  if (typeof ready !== 'number') return { refused: [...refused, ready] };
  if (typeof until !== 'number') return { refused: [...refused, until] };
  if (until < ready) refused.push(refusal('good-until-too-early', { goodUntil, readyBy }));
  if (refused.length > 0) return { refused };
  const clock = datedClock(program, midnightOf(today, program));
  return { clock, goal: { readyBy: ready - margin, goodUntil: until } };
}
