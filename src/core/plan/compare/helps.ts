import type { InPieces } from '../../in-pieces.ts';
import type { IsoDate } from '../../model/values.ts';
import type { DemandLine } from '../demand.ts';
import { ordering } from '../order/order.ts';
import type { Change, Help, NoSchedule } from '../result.ts';
import { resourcesOf } from '../schedule/resources.ts';
import { schedulesOfTry } from '../schedule/schedule-runs.ts';
import { midnightOf } from '../time/moment.ts';
import { type Work, workingOut } from '../work.ts';
import { type Question, withChange } from './with-change.ts';

/** Each try is a search of its own: so many runs at most, and so many tries in all. */
const runsUpTo = 500;
const triesUpTo = 24;
/** Pieces that may be laid in search of better layouts of each material, in each try. */
const cuttingBudget = 500;
/** Of builders, places and tools at most so many more are tried. */
const moreUpTo = 6;
const days = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 21, 28];
/** So many proposals, and one of fewer models. */
const helpsUpTo = 3;

/**
 * What would help where there is no schedule, what costs nothing first: more time, more of what is scarce, more
 * builders, more of anything else, fewer models. Each has been tried and has a schedule. A hold limit is never
 * weakened.
 */
export function* helpsFor(none: NoSchedule, work: Work, question: Question): InPieces<readonly Help[]> {
  if (work.runs.length > runsUpTo) return [];
  const tryOut = triesOf({ ...question, demand: work.lines.flatMap(askedFor) });
  const helps: Help[] = [];
  for (const rising of [moreTime(work, question.settings.today), ...moreOfEach(none, work)]) {
    if (helps.length < helpsUpTo) helps.push(...(yield* leastOf(rising, tryOut)));
  }
  return [...helps, ...(yield* leastOf(fewer(work), tryOut))];
}

/** Line by line what was asked for, so that a change means the same line in the demand as in the plan. */
function askedFor({ at: { id, level }, part, wanted, forOthers }: Work['lines'][number]): DemandLine[] {
  const named = {
    guide: id,
    ...(level === undefined ? {} : { level }),
    ...(part === undefined ? {} : { part }),
  };
  return wanted > forOthers ? [{ ...named, wanted: wanted - forOthers }] : [];
}

type Try = (change: Change) => InPieces<Help | undefined>;

function triesOf(question: Question): Try {
  let tried = 0;
  return function* (change) {
    if (tried++ >= triesUpTo) return undefined;
    const { workspace, demand, settings } = withChange(question, change);
    const work = yield* workingOut(workspace, demand, settings, cuttingBudget);
    if ('refused' in work) return undefined;
    const { schedule } = yield* ordering({ ...work, schedules: schedulesOfTry });
    return 'none' in schedule ? undefined : { change, ready: schedule.ready };
  };
}

/** The least of some rising changes that helps, if the greatest does; by halves. */
function* leastOf(rising: readonly Change[], tryOut: Try): InPieces<readonly Help[]> {
  const greatest = rising.at(-1);
  let best = greatest && (yield* tryOut(greatest));
  if (!best) return [];
  let [tooLittle, enough] = [-1, rising.length - 1];
  while (enough - tooLittle > 1) {
    const middle = (tooLittle + enough) >> 1;
    const help = yield* tryOut(rising[middle]!);
    if (help) [best, enough] = [help, middle];
    else tooLittle = middle;
  }
  return [best];
}

/** Backwards a later end; forwards, with dates, an earlier beginning that is not past. */
function moreTime({ goal, clock, workspace }: Work, today: IsoDate): Change[] {
  const minutes = days.map((count) => count * 1440);
  if (goal) return minutes.map((later) => ({ kind: 'later', minutes: later }));
  if (clock.kind === 'reference-week') return [];
  const first = midnightOf(today, workspace.program);
  const ahead = minutes.filter((earlier) => clock.start - earlier >= first);
  return ahead.map((earlier) => ({ kind: 'notice', minutes: earlier }));
}

/** Of what stands in the way first, then builders, then everything else that there is only so much of. */
function moreOfEach({ variant, facts }: NoSchedule, { lines, workspace, builders }: Work): Change[][] {
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
function fewer({ lines }: Work): Change[] {
  const wanted = lines.map((line) => line.wanted - line.forOthers);
  const most = Math.max(0, ...wanted);
  const line = wanted.indexOf(most);
  return Array.from({ length: Math.max(0, most - 1) }, (_, i) => ({
    kind: 'fewer',
    line,
    wanted: most - 1 - i,
  }));
}
