import type { Check, Finding } from './check.ts';
import type { Context, ModuleRead } from './lookup/context.ts';

/** A station whose guide is of another version than the module was written for. */
export const otherVersionOfGuide: Check = {
  code: 'other-version-of-guide',
  gravity: 'incomplete',
  find: (context) => context.modules.flatMap((read) => ofModule(read, context)),
};

function ofModule({ module, place }: ModuleRead, { workspace, origins }: Context): readonly Finding[] {
  const uses = module.stations.flatMap(({ id, models }, i) =>
    models.map((use, j) => ({ ...use, station: id, at: place('stations', i, 'models', j, 'version') })),
  );
  return uses.flatMap(({ guide: id, version, station, at }): readonly Finding[] => {
    const guide = workspace.guides[id];
    if (!guide || version === undefined || version === guide.version) return [];
    const facts = { station, guide: guide.title, version };
    if (guide.version === undefined) return [{ variant: 'none', places: [at], facts }];
    return [{ places: [at, origins.at(`guides/${id}/version`)], facts: { ...facts, is: guide.version } }];
  });
}
