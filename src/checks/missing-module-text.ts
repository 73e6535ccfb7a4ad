import { nearName } from '../core/near-name.ts';
import type { Check, Finding } from './check.ts';
import type { ModuleRead } from './lookup/context.ts';
import { isLikeAnId } from './lookup/names.ts';
import { textNamed } from './lookup/texts-of-module.ts';

/** A text to read that is written like the heading of a text of the module, and is none. */
export const missingModuleText: Check = {
  code: 'missing-module-text',
  gravity: 'incomplete',
  find: ({ modules }) => modules.flatMap(ofModule),
};

function ofModule({ module, place }: ModuleRead): readonly Finding[] {
  const known = module.prose.sections.map(({ slug }) => slug).filter((slug) => slug !== '');
  return module.prepare.flatMap(({ kind, what }, i): readonly Finding[] => {
    if (kind !== 'read' || !isLikeAnId(what) || textNamed(module, what)) return [];
    const near = nearName(what, known);
    const facts = { name: what, known: known.join(', '), words: what.replaceAll('-', ' ') };
    const places = [place('prepare', i, 'read')] as const;
    if (near) return [{ variant: 'near', places, facts: { ...facts, near } }];
    return [{ variant: known.length === 0 ? 'none' : undefined, places, facts }];
  });
}
