import type { Check, Finding } from './check.ts';
import type { Context, GuideRead, ModuleRead } from './lookup/context.ts';
import { linkedTo, namedAt, the, unknownNames } from './lookup/unknown-names.ts';
import { guideUsed, isGuideUse } from '../core/model/guide-use.ts';

/** A guide that another guide or a module names, and that is not there. */
export const unknownOtherGuide: Check = {
  code: 'unknown-other-guide',
  gravity: 'stops',
  find: (context) => [
    ...context.guides.flatMap((read) => ofGuide(read, context)),
    ...context.modules.flatMap((read) => ofModule(read, context)),
  ],
};

function ofGuide(read: GuideRead, { workspace, isThere }: Context): readonly Finding[] {
  const { id: own, materials } = read.guide;
  const rows = materials.flatMap(({ use }, i) =>
    isGuideUse(use)
      ? [
          {
            name: guideUsed(use),
            place: read.place('materials', i, 'use'),
            who: 'The list of materials',
            put: (id: string) => `use: guide:${id}`,
          },
        ]
      : [],
  );
  const others = Object.keys(workspace.guides).filter((id) => id !== own);
  return unknownNames([...rows, ...linkedTo(read, 'guide')], others, (name) => isThere('guides', name));
}

function ofModule(read: ModuleRead, { workspace, isThere }: Context): readonly Finding[] {
  const named = read.module.stations.flatMap(({ id, models }, i) =>
    models.flatMap(({ guide }, j) =>
      namedAt(read, guide, the('station', id), 'stations', i, 'models', j, 'guide'),
    ),
  );
  const known = Object.keys(workspace.guides);
  return unknownNames([...named, ...linkedTo(read, 'guide')], known, (name) => isThere('guides', name));
}
