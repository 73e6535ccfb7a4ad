import { secondsOf } from '../core/time/minutes.ts';
import type { Check } from './check.ts';
import { countsIn, textNamed } from './lookup/texts-of-module.ts';
import { written } from './lookup/written.ts';

/**
 * Words that a trainee reads in a minute: slower than prose for pleasure, since there is something to learn.
 *
 * @source Brysbaert, How many words do we read per minute? (2019), J Mem Lang 109:104047: 238 for non-fiction, silent
 *   (from memory); rounded down here.
 */
const wordsInAMinute = 200;

/** A text that takes longer to read than its module says. */
export const readingLongerThanStated: Check = {
  code: 'reading-longer-than-stated',
  gravity: 'doubtful',
  find: ({ modules }) =>
    modules.flatMap(({ module, place, prose }) =>
      module.prepare.flatMap(({ kind, what, takes }, i) => {
        const text = kind === 'read' ? textNamed(module, what) : undefined;
        if (!text || !takes) return [];
        const { words } = countsIn([text]);
        if (secondsOf(takes).div(60).mul(wordsInAMinute).gte(words)) return [];
        const at = place('prepare', i, 'takes');
        const minutes = String(Math.ceil(words / wordsInAMinute));
        const facts = { text: text.heading, words: String(words), stated: written(at), minutes };
        return [{ places: [at, prose(text.at)] as const, facts: { ...facts, rate: String(wordsInAMinute) } }];
      }),
    ),
};
