import { plannedJobs } from './back.ts';
import { covers } from '../../time/zone.ts';
import { datedClock } from '../time/clock.ts';
import { withInserts } from '../demand/inserts.ts';
import type { Because } from './obstacle.ts';
import { runsOfPlan } from '../demand/plan-runs.ts';
import { programWith } from './program-with.ts';
import { resourcesOf } from './resources.ts';
import type { Change, Help, NoSchedule } from '../result.ts';
import { type ToSchedule, schedulesOfTry, scheduleRuns } from './schedule-runs.ts';

/** Each try is a search of its own: so many runs at most, so few schedules, and so many tries in all. */
const runsUpTo = 500;
const triesUpTo = 24;
/** Of builders, places and tools at most so many more are tried. */
const moreUpTo = 6;
const days = [1, 2, 3, 5, 7, 10, 14, 21, 28];
/** So many proposals, and one of fewer models. */
const helpsUpTo = 3;

/**
 * The same with what would help, what costs nothing first: more time, more of what is scarce, more builders, more of
 * anything else, fewer models. Each has been tried and has a schedule. A hold limit is never weakened.
 */
export function withHelps(none: Because, work: ToSchedule): NoSchedule {
  const { kind, start } = work.clock;
  const told = { ...none, ...(kind === 'dated' ? { clock: { clock: kind, start } } : {}) };
  return { ...told, helps: work.runs.length > runsUpTo ? [] : helpsFor(none, work) };
}

function helpsFor(none: Because, work: ToSchedule): Help[] {
  const tries = triesOf({ ...work, schedules: schedulesOfTry });
  const helps: Help[] = [];
  for (const rising of [moreTime(work), ...moreOfEach(none, work)]) {
    if (helps.length < helpsUpTo) helps.push(...leastOf(rising, tries));
  }
  return [...helps, ...leastOf(fewer(work), tries)];
}

type Try = (change: Change) => Help | undefined;

function triesOf(work: ToSchedule): Try {
  let tried = 0;
  return (change) => {
    if (tried++ >= triesUpTo) return undefined;
    const changed = withChange(work, change);
    const found = scheduleRuns(changed);
    if ('none' in found) return undefined;
    const jobs = plannedJobs(changed, found);
    if (work.isInTime && !work.isInTime(jobs)) return undefined;
    return { change, ready: Math.max(...jobs.map(({ waitEnd }) => waitEnd)) };
  };
}

/** The least of some rising changes that helps, if the greatest does; by halves. */
function leastOf(rising: readonly Change[], tryOut: Try): Help[] {
  const greatest = rising.at(-1);
  let best = greatest && tryOut(greatest);
  if (!best) return [];
  let [tooLittle, enough] = [-1, rising.length - 1];
  while (enough - tooLittle > 1) {
    const middle = (tooLittle + enough) >> 1;
    const help = tryOut(rising[middle]!);
    if (help) [best, enough] = [help, middle];
    else tooLittle = middle;
  }
  return [best];
}

/** Backwards a later end; forwards, with dates, an earlier beginning that the table of the zone still knows. */
function moreTime({ goal, clock, workspace }: ToSchedule): Change[] {
  const minutes = days.map((count) => count * 1440);
  if (goal) return minutes.map((later) => ({ kind: 'later', minutes: later }));
  if (clock.kind === 'reference-week') return [];
  const isKnown = (earlier: number): boolean => covers(workspace.program.zone, clock.start - earlier - 1440);
  return minutes.filter(isKnown).map((earlier) => ({ kind: 'notice', minutes: earlier }));
}

/** Of what stands in the way first, then builders, then everything else that there is only so much of. */
function moreOfEach({ variant, facts }: Because, { lines, workspace, builders }: ToSchedule): Change[][] {
  const { names, capacities } = resourcesOf(lines, workspace.program, builders);
  const all = names.map((name, resource) => ({ name, has: capacities[resource]! }));
  const isNamed = ({ name }: (typeof all)[number]): boolean =>
    name.kind === variant && (name.kind === 'builders' || name.id === facts[name.kind]);
  const inOrder = [...all.filter(isNamed), ...all.filter((each) => !isNamed(each))];
  return inOrder.map(({ name: { kind, id }, has }) =>
    Array.from({ length: moreUpTo }, (_, i): Change => {
      const count = has + i + 1;
      return kind === 'builders' ? { kind, count } : { kind, id, count };
    }),
  );
}

/** Of the line of which most are wanted, fewer and fewer. */
function fewer({ lines }: ToSchedule): Change[] {
  const wanted = lines.map((line) => line.wanted - line.forOthers);
  const most = Math.max(0, ...wanted);
  const line = wanted.indexOf(most);
  return Array.from({ length: Math.max(0, most - 1) }, (_, i) => ({
    kind: 'fewer',
    line,
    wanted: most - 1 - i,
  }));
}

/** The work with one thing changed. What was ordered comes no later than it did. */
function withChange(work: ToSchedule, change: Change): ToSchedule {
  const { workspace, clock, goal } = work;
  switch (change.kind) {
    case 'builders':
      return { ...work, builders: change.count };
    case 'place':
    case 'tool':
      return { ...work, workspace: { ...workspace, program: programWith(workspace.program, change) } };
    case 'notice':
      return { ...work, clock: datedClock(workspace.program, clock.start - change.minutes) };
    case 'later': {
      const { readyBy, goodUntil } = goal!;
      return {
        ...work,
        goal: { readyBy: readyBy + change.minutes, goodUntil: goodUntil + change.minutes },
      };
    }
    case 'fewer':
      return withFewer(work, change);
  }
}

function withFewer(work: ToSchedule, change: Extract<Change, { kind: 'fewer' }>): ToSchedule {
  const { workspace, clock, spares, finished } = work;
  const asked = work.lines.flatMap((line, index) => {
    const wanted = index === change.line ? change.wanted : line.wanted - line.forOthers;
    const { at, part } = line;
    return wanted > 0 ? [{ at, ...(part === undefined ? {} : { part }), wanted, forOthers: 0 }] : [];
  });
  const all = withInserts(asked, workspace, spares, finished);
  return 'refused' in all ? work : { ...work, ...all, runs: runsOfPlan(all.lines, workspace, clock) };
}
