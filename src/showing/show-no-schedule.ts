import type { Workspace } from '../core/model/workspace.ts';
import type { NoSchedule } from '../core/plan/result.ts';
import { planWords } from '../words/plan.ts';
import { fill, inWords } from './fill.ts';
import { toolName } from './names.ts';
import { withThousands } from './numbers.ts';

/** Why there is no schedule: what was found, and what stands in the way. */
export function noScheduleText({ code, variant, facts }: NoSchedule, workspace: Workspace): string {
  const texts = textsOf(facts, workspace);
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

/** Facts as people read them: names for ids, thousands apart. */
function textsOf(facts: NoSchedule['facts'], workspace: Workspace): Readonly<Record<string, string>> {
  const texts = Object.entries(facts).map(([name, fact]): [string, string] => {
    if (name === 'tool') return [name, toolName(fact, workspace)];
    if (name === 'place') return [name, inWords(fact)];
    return [name, /^\d+$/.test(fact) ? withThousands(fact) : fact];
  });
  return Object.fromEntries(texts);
}
