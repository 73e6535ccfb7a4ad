import type { Workspace } from '../../core/model/workspace.ts';
import type { ChainLink, Load, PlannedSchedule } from '../../core/plan/result.ts';
import { exact } from '../../core/quantity/exact.ts';
import { planWords } from '../../words/plan.ts';
import { scheduleWords } from '../../words/schedule.ts';
import { capital, inWords } from '../text/fill.ts';
import { toolName } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import { showPercent } from '../text/percent.ts';
import type { ShownLoad } from '../shown/shown-schedule.ts';
import { shown } from '../shown/shown.ts';

/** How busy builders, places and tools are: how many there are, the most at once, and the share of the time. */
export function showLoads(
  key: string,
  { loads, chain }: Pick<PlannedSchedule, 'loads' | 'chain'>,
  workspace: Workspace,
): readonly ShownLoad[] {
  return loads.filter(isUsed).map((load, i) => ({
    kind: load.kind,
    isScarce: isScarce(load, chain),
    name: shown(`${key}[${i}].name`, nameOf(load, workspace)),
    has: shown(`${key}[${i}].has`, showCount(load.has)),
    peak: shown(`${key}[${i}].peak`, showCount(load.peak)),
    busy: shown(`${key}[${i}].busy`, busyText(load)),
  }));
}

/** A tool that is at hand and in nobody's plan has no load. */
function isUsed({ kind, peak }: Load): boolean {
  return kind === 'builders' || peak > 0;
}

/** All of them in use at once, and this share of the time: a quarter. */
const goodPart = 4;

function isScarce({ kind, id, peak, has, minutes, available }: Load, chain: readonly ChainLink[]): boolean {
  const isAwaited = chain.some((link) => link.because === kind && (link.id ?? '') === id);
  return isAwaited || (peak >= has && minutes * goodPart >= available);
}

function nameOf({ kind, id }: Load, workspace: Workspace): string {
  if (kind === 'builders') return scheduleWords.loads.builders;
  return kind === 'place' ? capital(inWords(id)) : toolName(id, workspace);
}

/** The share of the time in which it could be used. */
function busyText({ minutes, available }: Load): string {
  return available === 0 ? planWords.none : showPercent(exact(minutes).div(available));
}
