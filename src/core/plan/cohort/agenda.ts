import type { Module } from '../../model/module.ts';
import { minutesOf } from '../../time/minutes.ts';
import { type Turns, turnsOf } from './turns.ts';

/** An item of the agenda in its place: minutes from the beginning of the session. */
export interface TimedItem {
  readonly id: string;
  readonly start: number;
  readonly end: number;
  /** Where groups go round. */
  readonly turns?: Turns;
}

export interface Agenda {
  readonly items: readonly TimedItem[];
  readonly booked: number;
  /** Minutes over the booked time; 0 where it fits. */
  readonly over: number;
}

/**
 * What happens when: each item follows the one before, a circuit is as long as its rounds, and one item may take all
 * that is left of the booked time.
 *
 *     brief 15 | circuit 5 x 25 + 4 x 5 = 145 | the rest 20        booked 180
 *
 * @param groups  Sizes of the groups of trainees.
 */
export function agendaOf({ session, stations }: Module, groups: readonly number[]): Agenda {
  const booked = session ? minutesOf(session.booked) : 0;
  const timed = (session?.agenda ?? []).map((item) => {
    const own = item.stations.flatMap((id) => stations.find((station) => station.id === id) ?? []);
    const turns = own.length > 0 ? turnsOf(own, groups) : undefined;
    const takes = item.takes === undefined || item.takes === 'the rest' ? 0 : minutesOf(item.takes);
    return {
      id: item.id,
      minutes: turns?.minutes ?? takes,
      rest: item.takes === 'the rest' && !turns,
      turns,
    };
  });
  const fixed = timed.reduce((sum, { minutes }) => sum + minutes, 0);
  const left = Math.max(0, booked - fixed);
  let at = 0;
  const items = timed.map(({ id, minutes, rest, turns }): TimedItem => {
    const start = at;
    at += rest ? left : minutes;
    return { id, start, end: at, ...(turns ? { turns } : {}) };
  });
  return { items, booked, over: Math.max(0, fixed - booked) };
}
