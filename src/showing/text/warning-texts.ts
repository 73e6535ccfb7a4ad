import { Bug, type Diagnostic } from '../../core/diagnostic.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { Plan } from '../../core/plan/result.ts';
import { planWarnings } from '../../words/diagnostics/plan.ts';
import { asSentence } from './author-text.ts';
import { factText } from './fact-text.ts';
import { fill, inWords, listed } from './fill.ts';
import { planClock } from './plan-clock.ts';
import type { Clock } from './times.ts';

/** Warnings that say the same of several things are one sentence about them all: by code, the fact that is listed. */
const listedFacts: Readonly<Record<string, string>> = {
  'amount-beside-pieces': 'material',
  'arrival-unsaid': 'material',
  'price-missing': 'material',
  'rest-goes-off': 'material',
  'station-not-listed': 'station',
  'tool-not-listed': 'tool',
};

/** What the planner found, a sentence each, of those kinds that are meant. */
export function warningTexts(
  plan: Plan,
  workspace: Workspace,
  isMeant: (code: string) => boolean,
): readonly string[] {
  const alike = new Map<string, Diagnostic[]>();
  for (const warning of plan.warnings.filter(({ code }) => isMeant(code))) {
    const kind = kindOf(warning);
    alike.set(kind, [...(alike.get(kind) ?? []), warning]);
  }
  const clock = planClock(plan, workspace);
  return [...alike.values()].map((warnings) => warningText(joined(warnings), clock, workspace));
}

/** Those of one kind differ in the listed fact alone. */
function kindOf({ code, variant = '', facts }: Diagnostic): string {
  const others = Object.entries(facts).filter(([name]) => name !== listedFacts[code]);
  return [code, variant, ...others.flat()].join('|');
}

function joined(alike: readonly Diagnostic[]): Diagnostic {
  const [first] = alike;
  const fact = listedFacts[first!.code];
  if (fact === undefined) return first!;
  const names = [...new Set(alike.map(({ facts }) => facts[fact]!))].map((name) =>
    fact === 'station' ? inWords(name) : name,
  );
  return { ...first!, facts: { ...first!.facts, [fact]: listed(names) } };
}

function warningText({ code, variant, facts }: Diagnostic, clock: Clock, workspace: Workspace): string {
  const words = planWarnings[`${code}.${variant}`] ?? planWarnings[code];
  if (!words) throw new Bug('a warning of the plan has no words', { code });
  const texts = Object.entries(facts).map(([name, fact]) => [name, factText(fact, clock, workspace)]);
  return asSentence(fill<string>(words.says, Object.fromEntries(texts) as Record<string, string>));
}
