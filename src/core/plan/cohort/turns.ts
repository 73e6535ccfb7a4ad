import type { Station } from '../../model/module.ts';
import { minutesOf } from '../../time/minutes.ts';
import { type Rotation, rotation } from './rotation.ts';

/** Groups at the stations of one circuit, round by round. */
export interface Turns extends Rotation {
  /** Ids, in the order of the circuit. */
  readonly stations: readonly string[];
  /** Minutes of a round: as long as the longest station. */
  readonly round: number;
  /** Minutes between two rounds: as long as the slowest takes to change. */
  readonly changeOver: number;
  /** Seats of each station, by its index. */
  readonly seats: readonly number[];
}

/** @param groups  Sizes of the groups, the largest first. */
export function turnsOf(stations: readonly Station[], groups: readonly number[]): Turns {
  const round = Math.max(...stations.map(({ takes }) => minutesOf(takes)));
  const changeOver = Math.max(...stations.map((station) => minutesOf(station.changeOver)));
  return {
    ...rotation({ groups: groups.length, stations: stations.length, minutes: round, changeOver }),
    stations: stations.map(({ id }) => id),
    round,
    changeOver,
    seats: stations.map((station) => seatsOf(station, groups[0] ?? 0)),
  };
}

/** As many as the author says, or so many that a whole group sits down. */
export function seatsOf({ seats, atOne }: Station, group: number): number {
  return seats === 'as needed' ? Math.ceil(group / atOne) : seats;
}

type Each = Station['tools'][number]['each'];

/** How often a station needs what each seat, person or station has, while a group is there. */
export function setsOf(station: Station, group: number): Readonly<Record<Each, number>> {
  const seats = seatsOf(station, group);
  return { seat: seats, person: Math.min(seats * station.atOne, group), station: 1 };
}
