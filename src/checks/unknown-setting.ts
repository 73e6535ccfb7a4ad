import type { Guide } from '../core/model/guide.ts';
import type { Check } from './check.ts';
import { linkedTo, unknownNames } from './lookup/unknown-names.ts';

/** A setting that a link leads to, and that its step (outside the steps: any step) does not set. */
export const unknownSetting: Check = {
  code: 'unknown-setting',
  gravity: 'stops',
  find: ({ guides }) =>
    guides.flatMap((read) =>
      linkedTo(read, 'set').flatMap((link) => unknownNames([link], settingsIn(read.guide, link.section))),
    ),
};

function settingsIn({ steps, prose }: Guide, section: number | undefined): readonly string[] {
  const own = prose.sections[section ?? -1]?.step;
  const spoken = own === undefined ? steps : steps.filter(({ id }) => id === own);
  return [...new Set(spoken.flatMap(({ set }) => Object.keys(set)))];
}
