import type { Workspace } from '../../core/model/workspace.ts';
import type { Change, Plan } from '../../core/plan/result.ts';
import { whatIfWords } from '../../words/what-if.ts';
import { capital, counted, fill, inWords } from '../text/fill.ts';
import { lineName, toolName } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import { showMinutes } from '../text/times.ts';

const { changes: words } = whatIfWords;

/** What is changed: "One more builder", "2 more of “Stockpot”", "3 models fewer". */
export function changeText(change: Change, plan: Plan, workspace: Workspace): string {
  const text = texts[change.kind] as (change: Change, plan: Plan, workspace: Workspace) => string;
  return text(change, plan, workspace);
}

const texts: {
  readonly [K in Change['kind']]: (change: Change & { kind: K }, plan: Plan, workspace: Workspace) => string;
} = {
  builders: ({ count }, plan, workspace) => buildersText(count, hasOf('builders', '', plan, workspace)),
  place: ({ id, count }, plan, workspace) =>
    moreOfText(inWords(id), count, hasOf('place', id, plan, workspace)),
  tool: ({ id, count }, plan, workspace) =>
    moreOfText(toolName(id, workspace), count, hasOf('tool', id, plan, workspace)),
  notice: ({ minutes }) => fill(words.notice, { duration: showMinutes(minutes) }),
  later: ({ minutes }) => fill(words.later, { duration: showMinutes(minutes) }),
  fewer: ({ line, wanted }, plan) => fewerText(line, wanted, plan),
};

/** How many the plan reckons with; absent where nobody says. */
function hasOf(
  kind: 'builders' | 'place' | 'tool',
  id: string,
  { schedule }: Plan,
  { program }: Workspace,
): number | undefined {
  const loads = 'none' in schedule ? [] : schedule.loads;
  const load = loads.find((known) => known.kind === kind && known.id === id);
  if (load) return load.has;
  if (kind === 'builders') return program.builders;
  return kind === 'place' ? program.stations[id] : program.owned[id];
}

function buildersText(count: number, has = 0): string {
  const more = count - has;
  if (has === 0 || more === 0) return capital(counted(count, 'builder'));
  const n = showCount(Math.abs(more));
  if (more > 0) return more === 1 ? words.oneBuilderMore : fill(words.buildersMore, { n });
  return more === -1 ? words.oneBuilderFewer : fill(words.buildersFewer, { n });
}

function moreOfText(name: string, count: number, has = count): string {
  const more = count - has;
  if (more <= 0) return fill(words.many, { n: showCount(count), name });
  return more === 1 ? fill(words.oneMore, { name }) : fill(words.manyMore, { n: showCount(more), name });
}

function fewerText(index: number, wanted: number, { lines }: Plan): string {
  const line = lines[index]!;
  const fewer = line.wanted - wanted;
  const facts = { models: counted(Math.abs(fewer), 'model'), guide: lineName(line) };
  const [alone, of] = fewer >= 0 ? [words.fewer, words.fewerOf] : [words.more, words.moreOf];
  return lines.length === 1 ? fill<string>(alone, facts) : fill<string>(of, facts);
}
