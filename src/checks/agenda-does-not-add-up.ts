import { cohortOf } from '../core/plan/cohort/cohort.ts';
import type { TimedItem } from '../core/plan/cohort/agenda.ts';
import type { Module } from '../core/model/module.ts';
import { minutesOf } from '../core/time/minutes.ts';
import type { Check, Finding } from './check.ts';
import type { Context, ModuleRead } from './lookup/context.ts';
import { quoted, timeText } from './lookup/written.ts';

/** An agenda that takes more or less than the time that is booked, or a circuit that takes other than it says. */
export const agendaDoesNotAddUp: Check = {
  code: 'agenda-does-not-add-up',
  gravity: 'stops',
  find: ({ modules, workspace }) => modules.flatMap((read) => ofModule(read, workspace)),
};

type Item = NonNullable<Module['session']>['agenda'][number];

function ofModule(read: ModuleRead, { guides }: Context['workspace']): readonly Finding[] {
  const { session } = read.module;
  if (!session) return [];
  const { items, booked, over } = cohortOf(read.module, guides).agenda;
  const rests = session.agenda.flatMap(({ takes }, i) => (takes === 'the rest' ? [i] : []));
  const circuits = session.agenda.flatMap((item, i) => ofCircuit(read, item, items[i]!, i));
  if (rests.length > 1) return [...circuits, twoRests(read, rests)];
  const isTimed = session.agenda.every(({ takes }, i) => takes !== undefined || items[i]!.turns);
  const sum = over > 0 ? booked + over : (items.at(-1)?.end ?? 0);
  if (sum === booked || (sum < booked && !isTimed)) return circuits;
  const facts = { booked: timeText(booked), sum: timeText(sum), items: told(items, rests) };
  const places = [read.place('session', 'booked')] as const;
  if (sum > booked) return [...circuits, { variant: 'over', places, facts }];
  return [...circuits, { variant: 'under', places, facts, gravity: 'incomplete' }];
}

function twoRests(read: ModuleRead, [first, ...others]: readonly number[]): Finding {
  const place = (i: number) => read.place('session', 'agenda', i, 'takes');
  const ids = [first!, ...others].map((i) => read.module.session!.agenda[i]!.id);
  return { variant: 'rests', places: [place(first!), ...others.map(place)], facts: { items: quoted(ids) } };
}

/** A time at a circuit is passed over: its rounds say how long it is. */
function ofCircuit(
  read: ModuleRead,
  { id, takes }: Item,
  item: TimedItem,
  index: number,
): readonly Finding[] {
  if (!item.turns || takes === undefined || takes === 'the rest') return [];
  const computed = item.end - item.start;
  const stated = minutesOf(takes);
  if (stated === computed) return [];
  const facts = { item: id, stated: timeText(stated), computed: timeText(computed), rounds: rounds(item) };
  const places = [read.place('session', 'agenda', index, 'takes')] as const;
  return [{ variant: 'circuit', places, facts, gravity: 'incomplete' }];
}

/** “brief” 15 min, “circuit” 2 h 25 min (5 rounds of 25 min with 5 min between). */
function told(items: readonly TimedItem[], rests: readonly number[]): string {
  const timed = items.filter((_, i) => !rests.includes(i));
  const each = timed.map((item) => {
    const said = `“${item.id}” ${timeText(item.end - item.start)}`;
    return item.turns ? `${said} (${rounds(item)})` : said;
  });
  return each.join(', ');
}

function rounds({ turns }: TimedItem): string {
  const { stationOf, round, changeOver } = turns!;
  if (stationOf.length === 1) return `1 round of ${timeText(round)}`;
  return `${stationOf.length} rounds of ${timeText(round)} with ${timeText(changeOver)} between`;
}
