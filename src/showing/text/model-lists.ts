import { planWords } from '../../words/plan.ts';
import { scheduleWords } from '../../words/schedule.ts';
import { fill, listed } from './fill.ts';
import { showCount } from './numbers.ts';

/** So many ranges are said; more are counted. */
const rangesSaid = 4;

/** "model 4", "models 1–3 and 7". In order, each once. */
export function modelsText(models: readonly number[]): string {
  const { model, models: many } = scheduleWords.ready;
  return models.length === 1
    ? fill(model, { n: showCount(models[0]!) })
    : fill(many, { list: numbersText(models) });
}

/** "1–3 and 7". In order, each once. */
export function numbersText(numbers: readonly number[]): string {
  return listed(rangesOf(numbers).map(rangeText));
}

/**
 * Some of so many models: "all 12", "models 1–6", "all 12 but 5 and 7", "9 of 12 models".
 *
 * @param models  In order, each once; of 1..made.
 */
export function someModels(models: readonly number[], made: number): string {
  const { schedule } = planWords;
  const all = showCount(made);
  if (models.length === made) return fill(schedule.allModels, { models: all });
  if (rangesOf(models).length <= rangesSaid) return modelsText(models);
  const others = Array.from({ length: made }, (_, i) => i + 1).filter((model) => !models.includes(model));
  return rangesOf(others).length <= rangesSaid
    ? fill(schedule.allBut, { models: all, others: numbersText(others) })
    : fill(schedule.someOf, { models: showCount(models.length), made: all });
}

/** 1, 2, 3, 7 -> 1–3, 7. */
export function rangesOf(models: readonly number[]): readonly (readonly [from: number, to: number])[] {
  return models.reduce<[number, number][]>((ranges, model) => {
    const last = ranges.at(-1);
    if (last?.[1] === model - 1) last[1] = model;
    else ranges.push([model, model]);
    return ranges;
  }, []);
}

function rangeText([from, to]: readonly [from: number, to: number]): string {
  if (from === to) return showCount(from);
  return fill(planWords.schedule.range, { from: showCount(from), to: showCount(to) });
}
