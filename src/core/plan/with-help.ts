import type { ToSchedule } from './plan-schedule.ts';
import type { NoSchedule } from './result.ts';

/** At most so many more of what is scarce are tried. */
const triedUpTo = 6;
/** Each try is a schedule of its own. */
const runsUpTo = 500;

/**
 * The same, with what would help where something is scarce: `enough` builders, places or tools. Each number has been
 * tried, and has a schedule. A hold limit is never weakened.
 *
 * @param hasSchedule  Tries one.
 */
export function withHelp(
  none: NoSchedule,
  work: ToSchedule,
  hasSchedule: (work: ToSchedule) => boolean,
): NoSchedule {
  const has = Number(none.facts['has']);
  const more = Array.from({ length: triedUpTo }, (_, i) => has + i + 1);
  if (none.facts['has'] === undefined || work.runs.length > runsUpTo) return none;
  const enough = more.find((count) => hasSchedule({ ...changed(work, none, count), effort: 1 }));
  return enough === undefined ? none : { ...none, facts: { ...none.facts, enough: String(enough) } };
}

/** The work with so many of what is scarce. */
function changed(work: ToSchedule, { variant, facts }: NoSchedule, count: number): ToSchedule {
  const { program } = work.workspace;
  const withProgram = (change: Partial<typeof program>): ToSchedule => ({
    ...work,
    workspace: { ...work.workspace, program: { ...program, ...change } },
  });
  if (variant === 'place')
    return withProgram({ stations: { ...program.stations, [facts['place']!]: count } });
  if (variant === 'tool') return withProgram({ owned: { ...program.owned, [facts['tool']!]: count } });
  return { ...work, builders: count };
}
