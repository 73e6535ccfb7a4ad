import type { Check, Finding } from './check.ts';
import type { Context, GuideRead } from './lookup/context.ts';
import { materialName, toolName } from './lookup/names.ts';
import { materialsHeld } from './lookup/usage.ts';

/**
 * A guide with something in it that looks like what is used for patients, which does not say that its models are kept
 * apart from that.
 *
 * @source Centers for Disease Control and Prevention, Infusions of nonsterile simulation intravenous fluids, MMWR 64
 *         (2015), 226–227: more than 40 patients; what led to it was that it looked alike.
 */
export const looksClinical: Check = {
  code: 'looks-clinical',
  gravity: 'incomplete',
  find: (context) =>
    context.guides
      .filter(({ guide }) => guide.inUse.store?.apart === undefined)
      .flatMap((read) => ofGuide(read, context)),
};

function ofGuide(
  { guide, place, key }: GuideRead,
  { workspace, origins, levelsOf }: Context,
): readonly Finding[] {
  const used = levelsOf(guide).flatMap(({ at }) => at.tools.map(({ use }) => use));
  const materials = alike(materialsHeld(guide, workspace), workspace.materials);
  const tools = alike(used, workspace.tools);
  if (materials.length + tools.length === 0) return [];
  const names = [
    ...materials.map((id) => materialName(workspace, id)),
    ...tools.map((id) => toolName(workspace, id)),
  ];
  const places = [
    guide.inUse.store ? key('in-use', 'store') : place('title'),
    ...materials.map((id) => origins.at(`materials/${id}/also`)),
    ...tools.map((id) => origins.at(`tools/${id}/also`)),
  ] as const;
  return [{ places, facts: { guide: guide.title, names: names.join(', ') } }];
}

function alike(
  ids: readonly string[],
  all: Readonly<Record<string, { readonly also: readonly string[] }>>,
): readonly string[] {
  return [...new Set(ids)].filter((id) => all[id]?.also.includes('looks-clinical'));
}
