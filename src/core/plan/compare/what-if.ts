import type { Workspace } from '../../model/workspace.ts';
import { type Exact, exact, zero } from '../../quantity/exact.ts';
import type { DemandLine, PlanSettings } from '../demand.ts';
import { makePlan } from '../plan.ts';
import type { Change, ChainLink, Load, Plan, PlannedSchedule, WhatIf } from '../result.ts';
import { toolPrice } from '../cost/tools.ts';
import { type Question, withChange } from './with-change.ts';

const week = 7 * 1440;
const rowsUpTo = 5;
/** Of places and tools so many are tried, those on the critical chain first. */
const scarceUpTo = 6;

/**
 * What one more builder, one more of what is scarce, or a week's notice would bring: each a plan of its own, made with
 * the same effort. What gains most comes first; what changes nothing is left out, unless nothing gains.
 *
 * @param plan  Of the same demand and settings; without a schedule there is nothing to compare.
 */
export function whatIf(
  workspace: Workspace,
  demand: readonly DemandLine[],
  settings: PlanSettings,
  plan: Plan,
): readonly WhatIf[] {
  const { schedule } = plan;
  if ('none' in schedule) return [];
  const rows = changesFor(schedule).flatMap((change) => tried({ workspace, demand, settings }, change));
  const inOrder = rows
    .map((row) => ({ row, gain: gainOf(row, schedule) }))
    .sort((a, b) => b.gain - a.gain || a.row.cashToStart.compare(b.row.cashToStart));
  const gaining = inOrder.filter(({ gain }) => gain > 0);
  return (gaining.length > 0 ? gaining : inOrder).slice(0, rowsUpTo).map(({ row }) => row);
}

function changesFor({ loads, chain, clock }: PlannedSchedule): Change[] {
  const builders = loads.filter(({ kind }) => kind === 'builders');
  const scarce = [
    ...loads.filter((load) => isOnChain(load, chain)),
    ...loads.filter((load) => load.peak >= load.has && !isOnChain(load, chain)),
  ];
  return [
    ...builders.map(({ has }): Change => ({ kind: 'builders', count: has + 1 })),
    ...scarce.slice(0, scarceUpTo).flatMap(oneMore),
    ...(clock === 'dated' ? [{ kind: 'notice', minutes: week } as const] : []),
  ];
}

function isOnChain({ kind, id }: Load, chain: readonly ChainLink[]): boolean {
  return chain.some((link) => link.because === kind && link.id === id);
}

function oneMore({ kind, id, has }: Load): Change[] {
  return kind === 'builders' ? [] : [{ kind, id, count: has + 1 }];
}

/** The plan with the change; nothing where it is refused. */
function tried(question: Question, change: Change): WhatIf[] {
  const { workspace, demand, settings } = withChange(question, change);
  const plan = makePlan(workspace, demand, settings);
  if ('refused' in plan) return [];
  const { cost, schedule } = plan;
  const cashToStart = cost.cashToStart.add(priceOf(change, question.workspace));
  const times = 'none' in schedule ? {} : { ready: schedule.ready, firstHandsOn: schedule.firstHandsOn };
  return [{ change, ...times, outlay: cost.outlay, cashToStart }];
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
