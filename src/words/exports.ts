/** What files for other programs say to people: the header rows of tables, the titles of events. */
export const exportWords = {
  shopping: {
    material: 'Material',
    needed: 'Needed',
    fromStock: 'From stock',
    packs: 'Packs to buy',
    holds: 'A pack holds',
    supplier: 'Supplier',
    code: 'Code',
    price: 'Price of a pack',
    sum: 'Price',
    currency: 'Currency',
    left: 'Left over',
    /** Codes of GHS, and names of what has none. */
    dangers: 'Dangers',
    /** In the place of a material. */
    delivery: 'Delivery',
  },
  days: {
    day: 'Day',
    from: 'From',
    untilDay: 'Until day',
    until: 'Until',
    builder: 'Builder',
    guide: 'Guide',
    work: 'Work',
    waitsDay: 'Waits until day',
    waits: 'Waits until',
  },
  timetable: {
    day: 'Day',
    from: 'From',
    until: 'Until',
    what: 'What',
    round: 'Round',
    group: 'Group',
    station: 'Station',
  },
  /** In the place of a group's number. */
  everybody: 'all',
  /** In the place of a station. */
  rest: 'rest',
  events: {
    order: 'Order from {supplier}',
    delivery: 'Delivery from {supplier}',
    pack: '{material}: {packs}',
    packDangers: '{material}: {packs}. {dangers}',
    caution: '{word}: {text}',
    /** Below what an event is about. */
    last: '{trainingOnly} {defers}',
    work: '{work}, {who}',
    ready: '{line}: {models} ready',
    useBy: '{line}: the first is good until now',
  },
} as const;
