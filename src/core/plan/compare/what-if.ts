import type { Workspace } from '../../model/workspace.ts';
import { type Exact, exact, zero } from '../../quantity/exact.ts';
import type { DemandLine, PlanSettings } from '../demand.ts';
import { makePlan } from '../plan.ts';
import type { Change, ChainLink, Load, Plan, PlannedSchedule, WhatIf } from '../result.ts';
import { toolPrice } from '../cost/tools.ts';
import { mostByOne } from '../schedule/resources.ts';
import { midnightOf } from '../time/moment.ts';
import { type Question, withChange } from './with-change.ts';

const day = 1440;
/** So many days' notice, as far as they are not past. */
const noticeUpTo = 7;
const rowsUpTo = 5;
/** Of places and tools so many are tried, those on the critical chain first. */
const scarceUpTo = 6;
/** What gains fewer minutes is not worth a row. Common practice, no source. */
const worthARow = 15;

/**
 * What one more builder, one more of what is scarce, or some days' notice would bring: each a plan of its own, made
 * with the same effort. Of a tool of which one more gains nothing, as many more are tried as one run takes: four tins
 * for a pot that fills four. What gains most comes first; what changes nothing is left out, unless nothing gains.
 *
 * @param plan  Of the same demand and settings; without a schedule, or with nothing to do, there is nothing to compare.
 */
export function whatIf(
  workspace: Workspace,
  demand: readonly DemandLine[],
  settings: PlanSettings,
  plan: Plan,
): readonly WhatIf[] {
  const { schedule } = plan;
  if ('none' in schedule || schedule.jobs.length === 0) return [];
  const question = { workspace, demand, settings };
  const rows = changesFor(plan, schedule, question).flatMap((rising) =>
    firstToGain(rising, schedule, question),
  );
  const inOrder = rows.sort((a, b) => b.gain - a.gain || a.row.cashToStart.compare(b.row.cashToStart));
  const gaining = inOrder.filter(({ gain }) => gain >= worthARow);
  return (gaining.length > 0 ? gaining : inOrder).slice(0, rowsUpTo).map(({ row }) => row);
}

interface Tried {
  readonly row: WhatIf;
  /** In minutes. */
  readonly gain: number;
}

/** Of some rising changes the first that is worth a row, else the first. */
function firstToGain(rising: readonly Change[], schedule: PlannedSchedule, question: Question): Tried[] {
  let first: Tried | undefined;
  for (const change of rising) {
    const row = tried(question, change);
    if (!row) continue;
    const now = { row, gain: gainOf(row, schedule) };
    if (now.gain >= worthARow) return [now];
    first ??= now;
  }
  return first ? [first] : [];
}

function changesFor(
  { lines }: Plan,
  { loads, chain, start }: PlannedSchedule,
  question: Question,
): Change[][] {
  const builders = loads.filter(({ kind }) => kind === 'builders');
  const scarce = [
    ...loads.filter((load) => isOnChain(load, chain)),
    ...loads.filter((load) => load.peak >= load.has && !isOnChain(load, chain)),
  ];
  return [
    ...builders.map(({ has }): Change[] => [{ kind: 'builders', count: has + 1 }]),
    ...scarce.flatMap((load) => moreOf(load, lines)).slice(0, scarceUpTo),
    ...notice(start, question),
  ];
}

function isOnChain({ kind, id }: Load, chain: readonly ChainLink[]): boolean {
  return chain.some((link) => link.because === kind && link.id === id);
}

/** One more, then as many more as one run takes. */
function moreOf({ kind, id, has }: Load, lines: Plan['lines']): Change[][] {
  if (kind === 'builders') return [];
  const atOnce = kind === 'tool' ? mostByOne(lines, id) : 1;
  return [
    [...new Set([1, atOnce])].filter((more) => more > 0).map((more) => ({ kind, id, count: has + more })),
  ];
}

/** Forwards, with dates: an earlier beginning that is not past. */
function notice(start: number, { workspace, settings }: Question): Change[][] {
  if (settings.start === undefined) return [];
  const ahead = Math.floor((start - midnightOf(settings.today, workspace.program)) / day);
  const days = Math.min(noticeUpTo, ahead);
  return days < 1 ? [] : [[{ kind: 'notice', minutes: days * day }]];
}

/** The plan with the change; nothing where it is refused. */
function tried(question: Question, change: Change): WhatIf | undefined {
  const { workspace, demand, settings } = withChange(question, change);
  const plan = makePlan(workspace, demand, settings);
  if ('refused' in plan) return undefined;
  const { cost, schedule } = plan;
  const cashToStart = cost.cashToStart.add(priceOf(change, question.workspace));
  const times = 'none' in schedule ? {} : { ready: schedule.ready, firstHandsOn: schedule.firstHandsOn };
  return { change, ...times, outlay: cost.outlay, cashToStart };
}

/** Of the tools that are bought for it; the changed plan takes them to be there. */
function priceOf(change: Change, workspace: Workspace): Exact {
  if (change.kind !== 'tool') return zero;
  const owned = workspace.program.owned[change.id] ?? 0;
  return (toolPrice(change.id, workspace) ?? zero).mul(exact(change.count - owned));
}

/** Minutes by which all is ready earlier; planned backwards, by which work begins later. */
function gainOf({ ready, firstHandsOn }: WhatIf, { readyBy, ...plan }: PlannedSchedule): number {
  if (ready === undefined || firstHandsOn === undefined) return -Infinity;
  return readyBy === undefined ? plan.ready - ready : firstHandsOn - plan.firstHandsOn;
}
