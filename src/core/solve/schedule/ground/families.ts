import { jobAt } from './moments.ts';
import type { Prepared } from './prepared.ts';

/** For each job all that go together with it: tied both ways, or at the ends of one hold, and so on from one to the next. */
export function families({ blocks, holds, durations }: Prepared): number[][] {
  const bonds = [
    ...blocks,
    ...holds.map(({ from, to }) => [...from, ...to].map((moment) => jobAt(moment, durations.length))),
  ];
  const bondsOf = durations.map((): (readonly number[])[] => []);
  for (const bond of bonds) for (const job of bond) bondsOf[job]!.push(bond);
  const familyOf: number[][] = [];
  for (const job of durations.keys()) {
    if (familyOf[job]) continue;
    const family = new Set([job]);
    for (const member of family)
      for (const bond of bondsOf[member]!) for (const other of bond) family.add(other);
    const members = [...family];
    for (const member of members) familyOf[member] = members;
  }
  return familyOf;
}
