import { type GuideAt, type Signal, signals } from '../../core/model/guide.ts';
import { planWords } from '../../words/plan.ts';
import { asSentence } from '../text/author-text.ts';
import { fill, listed } from '../text/fill.ts';
import { showCount } from '../text/numbers.ts';
import { stepNumber } from '../text/names.ts';
import { shown } from '../shown/shown.ts';
import type { ShownCaution } from '../shown/shown-plan.ts';

/** All cautions of a level, most severe first; within a signal in the order of the guide. */
export function showCautions(key: string, at: GuideAt): readonly ShownCaution[] {
  return mostSevereFirst(at.cautions).map((caution) => showCaution(`${key}.${caution.id}`, caution, at));
}

/** Those that are met at one step: its own, and those of the whole guide that name no step. */
export function showStepCautions(key: string, at: GuideAt, step: string): readonly ShownCaution[] {
  const met = at.cautions.filter(({ steps }) => steps.includes(step));
  return mostSevereFirst(met).map((caution) => showCaution(`${key}.${caution.id}`, caution, at));
}

/** Cautions of several guides too; within a signal in the order given. */
export function mostSevereFirst<C extends { readonly signal: Signal }>(cautions: readonly C[]): readonly C[] {
  return signals.flatMap((signal) => cautions.filter((caution) => caution.signal === signal));
}

function showCaution(key: string, caution: GuideAt['cautions'][number], at: GuideAt): ShownCaution {
  return {
    id: caution.id,
    signal: caution.signal,
    word: shown(`${key}.word`, planWords.cautions.word[caution.signal]),
    hazard: shown(`${key}.hazard`, asSentence(caution.hazard)),
    harm: shown(`${key}.harm`, asSentence(caution.harm ?? '')),
    avoid: caution.avoid.map((text, i) => shown(`${key}.avoid[${i}]`, asSentence(text))),
    steps: shown(`${key}.steps`, stepsText(caution.steps, at)),
  };
}

/** "Steps 3 and 4"; empty for the whole guide. */
function stepsText(steps: readonly string[], at: GuideAt): string {
  const numbers = steps.map((step) => stepNumber(at, step)).filter((n) => n > 0);
  const { cautions } = planWords;
  if (numbers.length === 0) return '';
  const sorted = [...numbers].sort((a, b) => a - b).map(showCount);
  return fill(numbers.length === 1 ? cautions.step : cautions.steps, {
    steps: listed(sorted),
  });
}
