import type { ModelsAtStation, Station } from '../core/model/module.ts';
import type { Check, Finding } from './check.ts';
import type { Context, ModuleRead } from './lookup/context.ts';
import { namedAt, the, unknownNames } from './lookup/unknown-names.ts';

/** A level that a station wants of a guide, and that the guide does not have. */
export const stationOfUnknownLevel: Check = {
  code: 'station-of-unknown-level',
  gravity: 'stops',
  find: ({ modules, workspace }) =>
    modules.flatMap((read) =>
      read.module.stations.flatMap((station, i) =>
        station.models.flatMap((models, j) => ofModels(read, station, models, [i, j], workspace)),
      ),
    ),
};

function ofModels(
  read: ModuleRead,
  { id }: Station,
  { guide: of, level }: ModelsAtStation,
  [station, models]: readonly [number, number],
  { guides }: Context['workspace'],
): readonly Finding[] {
  const guide = guides[of];
  if (!guide) return [];
  const named = namedAt(read, level, the('station', id), 'stations', station, 'models', models, 'level');
  const found = unknownNames(
    named,
    guide.levels.map((one) => one.id),
  );
  return found.map((finding) => ({ ...finding, facts: { ...finding.facts, guide: guide.title } }));
}
