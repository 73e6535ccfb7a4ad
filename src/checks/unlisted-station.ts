import { nearName } from '../core/near-name.ts';
import type { Check, Finding } from './check.ts';
import type { Context, GuideRead } from './lookup/context.ts';

/** A place that a step needs, and of which the program does not say how many there are: it counts as unlimited. */
export const unlistedStation: Check = {
  code: 'unlisted-station',
  gravity: 'local',
  find: (context) => context.guides.flatMap((read) => ofGuide(read, context)),
};

function ofGuide({ guide, key }: GuideRead, { workspace }: Context): readonly Finding[] {
  const { stations } = workspace.program;
  const named = guide.steps.flatMap(({ at, waitsAt }, step) => [
    ...Object.keys(at).map((id) => ({ id, place: key('steps', step, 'at', id) })),
    ...Object.keys(waitsAt).map((id) => ({ id, place: key('steps', step, 'waits-at', id) })),
  ]);
  const unlisted = [...new Set(named.map(({ id }) => id))].filter((id) => !Object.hasOwn(stations, id));
  return unlisted.map((id) => {
    const [first, ...others] = named.filter((one) => one.id === id).map(({ place }) => place);
    const near = nearName(id, Object.keys(stations));
    const facts = { station: id, ...(near ? { near } : {}) };
    return { variant: near ? 'near' : undefined, places: [first!, ...others], facts };
  });
}
