import type { Workspace } from '../../core/model/workspace.ts';
import type { NoSchedule } from '../../core/plan/result.ts';
import { planWords } from '../../words/plan.ts';
import { factText } from '../text/fact-text.ts';
import { fill, inWords } from '../text/fill.ts';
import { toolName } from '../text/names.ts';
import type { Clock } from '../text/times.ts';

/** Why there is no schedule: what was found, and what stands in the way. */
export function noScheduleText(
  { code, variant, facts }: NoSchedule,
  clock: Clock,
  workspace: Workspace,
): string {
  const texts = textsOf(facts, clock, workspace);
  const found = fill<string>(planWords.noSchedule[code], texts);
  const obstacles: Readonly<Record<string, readonly string[]>> = planWords.obstacles;
  const cause = (obstacles[variant ?? ''] ?? []).find((sentence) =>
    blanksOf(sentence).every((name) => name in texts),
  );
  return cause === undefined ? found : `${found} ${fill<string>(cause, texts)}`;
}

function blanksOf(sentence: string): readonly string[] {
  return [...sentence.matchAll(/\{([a-zA-Z]+)\}/g)].map(([, name]) => name!);
}

/** Facts as people read them: names for ids, moments as days and times. */
function textsOf(
  facts: NoSchedule['facts'],
  clock: Clock,
  workspace: Workspace,
): Readonly<Record<string, string>> {
  const texts = Object.entries(facts).map(([name, fact]): [string, string] => {
    if (name === 'tool') return [name, toolName(fact, workspace)];
    if (name === 'place') return [name, inWords(fact)];
    return [name, factText(fact, clock, workspace)];
  });
  return Object.fromEntries(texts);
}
