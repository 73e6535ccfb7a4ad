import type { KeepsAt } from '../../core/model/guide.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { Plan, PlannedLine } from '../../core/plan/result.ts';
import { exact } from '../../core/quantity/exact.ts';
import { planWords } from '../../words/plan.ts';
import { nouns } from '../../words/units.ts';
import { properly } from '../text/author-text.ts';
import { fill, noBreak } from '../text/fill.ts';
import { showSum } from '../text/money.ts';
import { showRatio } from '../text/numbers.ts';
import { clockOf } from '../text/plan-clock.ts';
import { shown } from '../shown/shown.ts';
import type { ShownFact } from '../shown/shown-plan.ts';
import { showKeeping, showMinutes, showMoment, showWork } from '../text/times.ts';

/** The figures at the head: how long it takes, when it is ready, what to buy, what one costs. */
export function showPlanFacts(key: string, plan: Plan, workspace: Workspace): readonly ShownFact[] {
  const { cost, schedule } = plan;
  const { program } = workspace;
  const [only, ...others] = cost.each;
  return facts(key, {
    'hands-on': showWork(cost.handsOn),
    'build-time': 'none' in schedule ? '' : showMinutes(schedule.buildTime),
    'lead-time': 'none' in schedule || schedule.leadTime === undefined ? '' : showMinutes(schedule.leadTime),
    begin:
      'none' in schedule || schedule.readyBy === undefined
        ? ''
        : showMoment(schedule.firstHandsOn, clockOf(schedule, workspace)),
    ready: 'none' in schedule ? '' : showMoment(schedule.ready, clockOf(schedule, workspace)),
    outlay: showSum(cost.outlay, program, cost.complete, 'up'),
    'used-each': only && others.length === 0 ? showSum(only.used, program, cost.complete) : '',
  });
}

/** The figures of one line: what one costs, how long it keeps and lasts. */
export function showLineFacts(
  key: string,
  plan: Plan,
  index: number,
  { program }: Workspace,
): readonly ShownFact[] {
  const { cost } = plan;
  const { at } = plan.lines[index]!;
  const { used, perUse } = cost.each[index]!;
  return facts(key, {
    'used-each': showSum(used, program, cost.complete),
    'per-use': perUse ? showSum(perUse, program, cost.complete) : '',
    keeps: showKeeps(at),
    lasts: lastsText(at),
  });
}

/** Facts in the order given; those without a value are left out. */
function facts(key: string, values: Partial<Record<ShownFact['id'], string>>): readonly ShownFact[] {
  const said = Object.entries(values).filter(([, value]) => value !== '') as [ShownFact['id'], string][];
  return said.map(([id, value]) => ({
    id,
    name: shown(`${key}.${id}.name`, planWords.facts[id]),
    value: shown(`${key}.${id}.value`, value),
  }));
}

/** "5 days (fridge, covered); 1 day (room)". */
export function showKeeps({ keeps }: PlannedLine['at']): string {
  return keeps.map(keepsText).join(planWords.andAlso);
}

/** "5 d (fridge, covered)". */
function keepsText({ for: time, at: place, how }: KeepsAt): string {
  const texts = { time: showKeeping(time), place };
  return how === undefined
    ? fill(planWords.keepsAt, texts)
    : fill(planWords.keepsHow, { ...texts, how: properly(how) });
}

/** "8 uses", or of each part: "frame 500 uses, skin 4 uses". */
function lastsText({ lasts, parts }: PlannedLine['at']): string {
  if (lasts !== undefined) return usesText(lasts);
  return parts
    .flatMap(({ name, lasts: own }) =>
      own === undefined ? [] : [fill(planWords.lastsPart, { part: name, uses: usesText(own) })],
    )
    .join(planWords.listComma);
}

function usesText(lasts: string): string {
  const uses = exact(lasts);
  return `${showRatio(uses)}${noBreak}${uses.equals(1) ? nouns.use.one : nouns.use.many}`;
}
