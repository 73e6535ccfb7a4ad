import type { Guide } from '../core/model/guide.ts';
import type { Session } from '../core/model/module.ts';
import { limitMinutes } from '../core/plan/time/clock.ts';
import { minutesOf } from '../core/time/minutes.ts';
import type { Check, Finding } from './check.ts';
import type { Context, ModuleRead } from './lookup/context.ts';
import { written } from './lookup/written.ts';

/**
 * A model that is ready when its session begins, as it must be, and that is no longer good when the session ends. What
 * keeps for days is for the plan of a session to see, which knows when it is made.
 */
export const goesOffInSession: Check = {
  code: 'goes-off-in-session',
  gravity: 'incomplete',
  find: (context) =>
    context.modules.flatMap((read) =>
      read.module.session ? ofModule(read, read.module.session, context) : [],
    ),
};

function ofModule(
  { module, place }: ModuleRead,
  { booked }: Session,
  { workspace, origins }: Context,
): readonly Finding[] {
  const uses = module.stations.flatMap(({ models }, i) => models.map(({ guide }, j) => ({ guide, i, j })));
  return uses.flatMap(({ guide: id, i, j }): readonly Finding[] => {
    const guide = workspace.guides[id];
    const longest = guide && longestKeeping(guide);
    if (!longest || longest.minutes >= minutesOf(booked)) return [];
    const at = origins.at(`guides/${id}/keeps/${longest.index}/for`);
    const bookedAt = place('session', 'booked');
    const facts = { guide: guide.title, keeps: written(at), booked: written(bookedAt) };
    return [{ places: [place('stations', i, 'models', j, 'guide'), at, bookedAt], facts }];
  });
}

/** The best of the ways of keeping it, by its place in the list; none where it keeps for months, or nobody says. */
function longestKeeping({ keeps }: Guide): { readonly index: number; readonly minutes: number } | undefined {
  const ways = keeps.map(({ for: time }, index) => ({
    index,
    minutes: 'months' in time ? Infinity : limitMinutes(time),
  }));
  const [longest] = ways.sort((a, b) => b.minutes - a.minutes);
  return longest?.minutes === Infinity ? undefined : longest;
}
