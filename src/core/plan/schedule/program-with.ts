import type { Program } from '../../model/program.ts';
import type { Change } from '../result.ts';

/** The program with so many of a place, or of a tool. */
export function programWith(
  program: Program,
  { kind, id, count }: Extract<Change, { kind: 'place' | 'tool' }>,
): Program {
  return kind === 'place'
    ? { ...program, stations: { ...program.stations, [id]: count } }
    : { ...program, owned: { ...program.owned, [id]: count } };
}
