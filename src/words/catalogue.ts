/** What the catalogue says: its list, its choices, how many guides match. */
export const catalogueWords = {
  title: 'Guides',
  lead: 'Bench models to build from craft-shop materials, with amounts, times, cost and cautions.',
  guide: 'Guide',
  levels: 'Levels',
  draft: 'Draft',
  empty: 'There is no guide yet.',
  says: 'Figures are for one model of the batch that is published, built in working hours with materials at hand; build time is that of the whole batch.',

  /** Above the choices. */
  choose: 'Narrow the list',
  chooseSays: 'Within a group any will do; each group must be met.',
  clear: 'Clear all choices',
  order: 'Sort by',
  orders: { title: 'Title', cost: 'Cost', build: 'Build time', 'hands-on': 'Hands-on' },

  columns: {
    batch: 'Batch',
    cost: 'Used, each',
    build: 'Build time',
    handsOn: 'Hands-on, each',
    keeps: 'Keeps',
    meets: 'Meets',
  },
  scale: 'The bar below each guide is its build time, the thick part hands-on; the whole width is {longest}.',

  all: { one: '1 guide', many: '{all} guides' },
  match: { one: '1 of {all} guides matches', many: '{count} of {all} guides match' },
  none: 'No guide has all of this.',
  noneWay: 'Take one choice away:',
  without: 'Without “{choice}”',

  facets: {
    skill: 'Skill trained',
    cost: 'Used, each',
    build: 'Build time',
    order: 'Order ahead',
    'hands-on': 'Hands-on, each',
    keeps: 'Keeps',
    hazard: 'Danger met',
    without: 'Leave out a danger',
    tool: 'Tool needed',
    buy: 'Tools to buy',
    status: 'Status',
  },
  facetSays: {
    without: 'As far as the guides say; read the cautions of each.',
    tool: 'Beside each, how many the program has.',
  },
  owned: '{count} here',
  ownedNone: 'none here',
  ownedUnsaid: 'not said',
  buy: { none: 'All tools are here', some: 'Some to buy' },
  ranges: { upTo: 'up to {most}', between: '{least} to {most}', over: 'over {least}' },
  unknown: 'not known',
  noOrder: 'nothing to order',
} as const;
