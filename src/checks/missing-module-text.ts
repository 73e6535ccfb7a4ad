import { nearName } from '../core/near-name.ts';
import type { Check } from './check.ts';
import { isLikeAnId } from './names.ts';
import { textNamed } from './texts-of-module.ts';

/** A text to read that is written like the heading of a text of the module, and is none. */
export const missingModuleText: Check = {
  code: 'missing-module-text',
  gravity: 'incomplete',
  find: ({ modules }) =>
    modules.flatMap(({ module, place }) => {
      const known = module.prose.sections.map(({ slug }) => slug).filter((slug) => slug !== '');
      return module.prepare.flatMap(({ kind, what }, i) => {
        if (kind !== 'read' || !isLikeAnId(what) || textNamed(module, what)) return [];
        const near = nearName(what, known);
        const facts = { name: what, known: known.join(', '), words: what.replaceAll('-', ' ') };
        return [
          {
            variant: near ? 'near' : known.length === 0 ? 'none' : undefined,
            places: [place('prepare', i, 'read')] as const,
            facts: near ? { ...facts, near } : facts,
          },
        ];
      });
    }),
};
