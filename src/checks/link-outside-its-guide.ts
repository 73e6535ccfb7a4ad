import type { LinkKind } from '../core/model/prose.ts';
import type { Check } from './check.ts';

/** What only a guide has: in the text of a module nobody could tell of which. */
const ofGuides: readonly LinkKind[] = ['caution', 'set', 'step'];

/** A link of a module to a step, a setting or a caution. */
export const linkOutsideItsGuide: Check = {
  code: 'link-outside-its-guide',
  gravity: 'stops',
  find: ({ modules }) =>
    modules.flatMap(({ module, prose }) =>
      module.prose.links.flatMap(({ kind, text, at }) =>
        ofGuides.some((own) => own === kind)
          ? [{ places: [prose(at)] as const, facts: { text, kind: kind === 'set' ? 'setting' : kind } }]
          : [],
      ),
    ),
};
