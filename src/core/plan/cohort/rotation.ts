/** Groups that go round a circuit of stations, all for as long and at the same time. */
export interface Circuit {
  readonly groups: number;
  readonly stations: number;
  /** Minutes at a station. */
  readonly minutes: number;
  /** Minutes from one station to the next. */
  readonly changeOver: number;
}

/** Who is where, round by round. */
export interface Rotation {
  /** Station of each group, by its index: `stationOf[round][group]`; `undefined` where the group rests. */
  readonly stationOf: readonly (readonly (number | undefined)[])[];
  /** Minutes from the beginning of the first round to the end of the last. */
  readonly minutes: number;
}

/**
 * The timetable of a circuit: every group is once at every station, never two at one. Where there are more groups than
 * stations some rest; where there are more stations some stand empty.
 *
 *     groups      1  2  3  4
 *     round 1     A  B  C  –        3 stations, 4 groups: 4 rounds, each group rests once
 *     round 2     B  C  –  A
 *     round 3     C  –  A  B
 *     round 4     –  A  B  C
 *
 * To a single station they come in their order: 1, 2, 3, 4.
 *
 * @source Cyclic Latin square; any textbook on the design of experiments (from memory).
 */
export function rotation({ groups, stations, minutes, changeOver }: Circuit): Rotation {
  const rounds = groups === 0 ? 0 : Math.max(stations, groups);
  const stationOf = Array.from({ length: rounds }, (_, round) =>
    Array.from({ length: groups }, (_, group) => {
      const place = (stations === 1 ? group + rounds - round : group + round) % rounds;
      return place < stations ? place : undefined;
    }),
  );
  return { stationOf, minutes: circuitMinutes(rounds, minutes, changeOver) };
}

/** So many rounds, and what lies between them. */
export function circuitMinutes(rounds: number, minutes: number, changeOver: number): number {
  return rounds * minutes + Math.max(0, rounds - 1) * changeOver;
}

/** How many rounds fit into a time. */
export function roundsWithin(time: number, minutes: number, changeOver: number): number {
  return Math.max(0, Math.floor((time + changeOver) / (minutes + changeOver)));
}

/**
 * The fewest seats at which everybody has a turn within a time.
 *
 *     20 people, turns of 25 min with 5 min between them, 145 min   ->   5 rounds, 4 seats
 *
 * @returns `undefined` where not even one round fits.
 */
export function seatsNeeded(
  people: number,
  time: number,
  { minutes, changeOver }: Pick<Circuit, 'minutes' | 'changeOver'>,
): number | undefined {
  const rounds = roundsWithin(time, minutes, changeOver);
  return rounds === 0 ? undefined : Math.ceil(people / rounds);
}
