import { cohortOf } from '../core/plan/cohort/cohort.ts';
import type { Check, Finding } from './check.ts';
import type { Context, ModuleRead } from './lookup/context.ts';
import { toolName } from './lookup/names.ts';

/** Stations that need more of a tool at once than the program has. */
export const moreToolsThanOwned: Check = {
  code: 'more-tools-than-owned',
  gravity: 'local',
  find: (context) => context.modules.flatMap((read) => ofModule(read, context)),
};

function ofModule({ module, place }: ModuleRead, { workspace, origins }: Context): readonly Finding[] {
  const { owned } = workspace.program;
  const needed = [...cohortOf(module, workspace.guides).tools];
  return needed.flatMap(([id, count]) => {
    const has = owned[id] ?? count;
    if (count <= has) return [];
    const [first, ...others] = module.stations.flatMap(({ tools }, i) =>
      tools.flatMap(({ use }, j) => (use === id ? [place('stations', i, 'tools', j, 'use')] : [])),
    );
    const facts = { module: module.title, tool: toolName(workspace, id), id };
    const counts = { needed: String(count), has: String(has) };
    return [
      { places: [first!, ...others, origins.at(`program/owned/${id}`)], facts: { ...facts, ...counts } },
    ];
  });
}
