import { nearName } from '../core/near-name.ts';
import { scriptWords } from '../words/index.ts';
import type { Check } from './check.ts';
import { isLikeAnId } from './lookup/names.ts';
import { namedIn, the, unknownNames } from './lookup/unknown-names.ts';

/** A line of a script that is written like an id of the published list, and is none: it would be said as it stands. */
export const unknownScriptSentence: Check = {
  code: 'unknown-script-sentence',
  gravity: 'incomplete',
  find: ({ modules }) =>
    modules.flatMap((read) => {
      const agenda = read.module.session?.agenda ?? [];
      const named = agenda.flatMap(({ id, script }, i) =>
        namedIn(read, script, the('agenda item', id), 'session', 'agenda', i, 'script'),
      );
      const known = Object.keys(scriptWords);
      const isMeant = (name: string): boolean => isLikeAnId(name) || nearName(name, known) !== undefined;
      const found = unknownNames(
        named.filter(({ name }) => isMeant(name)),
        known,
      );
      return found.map((finding) => ({
        ...finding,
        facts: { ...finding.facts, words: finding.facts['name']!.replaceAll('-', ' ') },
      }));
    }),
};
