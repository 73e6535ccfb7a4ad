import type { Workspace } from '../../core/model/workspace.ts';
import type { Change, Help, NoSchedule, Plan } from '../../core/plan/result.ts';
import { whatIfWords } from '../../words/what-if.ts';
import { counted, fill, inWords } from '../text/fill.ts';
import { lineName, toolName } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import { planClock } from '../text/plan-clock.ts';
import { type Shown, shown } from '../shown/shown.ts';
import { showMinutes, showMoment } from '../text/times.ts';

const { helps: words } = whatIfWords;

/** What would help where there is no schedule, a sentence each: "With 3 builders all would be ready day 3, 12:30." */
export function showHelps(
  key: string,
  { helps }: Pick<NoSchedule, 'helps'>,
  plan: Plan,
  workspace: Workspace,
): readonly Shown[] {
  return helps.map((help, i) => shown(`${key}[${i}]`, helpText(help, plan, workspace)));
}

function helpText({ change, ready }: Help, plan: Plan, workspace: Workspace): string {
  const facts = { ...factsOf(change, plan, workspace), time: showMoment(ready, planClock(plan, workspace)) };
  return fill<string>(words[change.kind], facts);
}

type Facts = Readonly<Record<string, string>>;

/** What the sentence of each kind of change names. */
const facts: {
  readonly [K in Change['kind']]: (change: Change & { kind: K }, plan: Plan, workspace: Workspace) => Facts;
} = {
  builders: ({ count }) => ({ builders: counted(count, 'builder') }),
  place: ({ id, count }) => ({ name: inWords(id), count: showCount(count) }),
  tool: ({ id, count }, _, workspace) => ({ name: toolName(id, workspace), count: showCount(count) }),
  notice: ({ minutes }) => ({ duration: showMinutes(minutes) }),
  later: ({ minutes }) => ({ duration: showMinutes(minutes) }),
  fewer: ({ line, wanted }, { lines }) => ({
    models: counted(wanted, 'model'),
    guide: lineName(lines[line]!),
    planned: showCount(lines[line]!.wanted),
  }),
};

function factsOf(change: Change, plan: Plan, workspace: Workspace): Facts {
  const of = facts[change.kind] as (change: Change, plan: Plan, workspace: Workspace) => Facts;
  return of(change, plan, workspace);
}
