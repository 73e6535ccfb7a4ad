import type { Basis } from '../../core/model/guide.ts';
import { nearName } from '../../core/near-name.ts';
import { means, wrong } from '../values/plain-words.ts';
import type { TextReader } from '../sheet/written.ts';
import type { GuideNames } from './names.ts';

/**
 * What an amount, a run or a caution serves, as a person types it: `each model`, `every 6 models`, `each stockpot`,
 * `the batch`, and also `model`, `per model`, `every 6`, `batch`.
 */
export function basisReader(names: GuideNames): TextReader<Basis> {
  return (text) => {
    const words = text
      .trim()
      .toLowerCase()
      .replaceAll(/\s+/g, ' ')
      .replace(/^(each|every|per|the|a|an|all|for)\b ?/, '');
    const many = /^(\d+)( models?)?$/.exec(words);
    if (many) return readEvery(text, Number(many[1]));
    if (words === '' || words === 'model' || words === 'one') return means({ per: 'model' });
    if (words === 'batch' || words === 'whole batch') return means({ per: 'batch' });
    return readNamedBasis(words, names);
  };
}

function readEvery(text: string, models: number) {
  return models >= 1 && models <= 10_000
    ? means<Basis>({ per: 'every', models })
    : wrong('basis-unknown', { text }, 'every');
}

function readNamedBasis(words: string, { parts, tools }: GuideNames) {
  const name = [words, words.replaceAll(' ', '-')].find((one) => parts.includes(one) || tools.includes(one));
  if (name === undefined) return unknownBasis(words, [...parts, ...tools]);
  return means<Basis>(parts.includes(name) ? { per: 'part', part: name } : { per: 'tool', tool: name });
}

function unknownBasis(words: string, known: readonly string[]) {
  const near = nearName(words, ['model', 'batch', ...known]);
  if (near) return wrong('basis-unknown', { name: words, near }, 'near');
  const named = known.length > 0 ? { known: known.join(', ') } : {};
  return wrong('basis-unknown', { name: words, ...named });
}
