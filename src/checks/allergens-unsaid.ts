import type { Check, Finding } from './check.ts';
import type { Context, GuideRead } from './lookup/context.ts';
import { materialsHeld } from './lookup/usage.ts';

/**
 * Materials of which nobody says whether they are, or hold, latex, animal tissue or a food allergen, in a guide that
 * others rely on: its labels then say that none is named. Nothing is guessed from names.
 */
export const allergensUnsaid: Check = {
  code: 'allergens-unsaid',
  gravity: 'note',
  find: (context) =>
    context.guides.filter(({ guide }) => guide.status !== 'draft').flatMap((read) => ofGuide(read, context)),
};

function ofGuide({ guide, key }: GuideRead, context: Context): readonly Finding[] {
  const unsaid = materialsHeld(guide, context.workspace).filter(
    (id) => id in context.workspace.materials && !isSaid(id, context),
  );
  if (unsaid.length === 0) return [];
  const names = unsaid.map((id) => context.workspace.materials[id]!.name).join(', ');
  return [{ places: [key('materials')], facts: { guide: guide.title, materials: names } }];
}

/** What was left to its default has the place of what it stands in. */
function isSaid(id: string, { origins }: Context): boolean {
  const [also, whole] = [origins.at(`materials/${id}/also`), origins.at(`materials/${id}`)];
  return also.line !== whole.line || also.column !== whole.column;
}
