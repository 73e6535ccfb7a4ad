/** The same function, which works each thing out once; things are told apart as a `Map` does. */
export function onceEach<Thing, Found>(workOut: (thing: Thing) => Found): (thing: Thing) => Found {
  const known = new Map<Thing, { readonly found: Found }>();
  return (thing) => {
    const before = known.get(thing) ?? { found: workOut(thing) };
    known.set(thing, before);
    return before.found;
  };
}
