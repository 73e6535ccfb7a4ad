import { wholeNumber, type OptionReader } from '../demand/read-option.ts';

/** How many come of one kind of people, or to instruct. */
export const readHeads = wholeNumber(0, 1000);

/** One of the groups, from 1. */
export const readGroup = wholeNumber(1, 1000);

/**
 * How many come of each kind of people, as readers write it.
 *
 *     trainees=20, seniors=2   ->   { trainees: 20, seniors: 2 }
 *
 * @returns `undefined` where it means nothing, or a kind stands twice.
 */
export const readPeople: OptionReader<Readonly<Record<string, number>>> = (written) => {
  const kinds = written.split(',').map(readKind);
  if (kinds.some((kind) => kind === undefined)) return undefined;
  const people = Object.fromEntries(kinds as readonly (readonly [string, number])[]);
  return Object.keys(people).length === kinds.length ? people : undefined;
};

function readKind(written: string): readonly [id: string, count: number] | undefined {
  const [, id, text] = /^\s*([a-z0-9-]+)\s*=\s*(\d+)\s*$/.exec(written) ?? [];
  const count = text === undefined ? undefined : readHeads(text);
  return id === undefined || count === undefined ? undefined : [id, count];
}
