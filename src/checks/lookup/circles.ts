/** Something that comes after others of its kind. */
interface Following {
  readonly id: string;
  readonly after: readonly string[];
}

/** Things that come after each other, so that none can be the first: each circle once, as the shortest way round. */
export function circlesIn<T extends Following>(all: readonly T[]): readonly (readonly [T, ...T[]])[] {
  const told = new Set<string>();
  return all.flatMap((one) => {
    const circle = told.has(one.id) ? undefined : circleFrom(one, all);
    circle?.forEach(({ id }) => told.add(id));
    return circle ? [circle] : [];
  });
}

/** The shortest way from a thing back to itself over what each comes after; `undefined` where there is none. */
function circleFrom<T extends Following>(start: T, all: readonly T[]): readonly [T, ...T[]] | undefined {
  const ways: [T, ...T[]][] = [[start]];
  const seen = new Set<string>();
  for (const way of ways) {
    for (const before of all.filter(({ id }) => way.at(-1)!.after.includes(id))) {
      if (before === start) return way;
      if (!seen.has(before.id)) ways.push([...way, before]);
      seen.add(before.id);
    }
  }
  return undefined;
}
