/** The panel with which a reader plans for their own program: its labels, what may be typed, and what it answers. */
export const plannerWords = {
  heading: 'For your program',
  says: 'Change a number: the whole page follows.',

  batch: 'Good models',
  fewer: 'Fewer: {what}',
  more: 'More: {what}',
  batchHelp: 'A whole number from 1 to 10,000.',
  builders: 'Builders',
  buildersHelp: 'A whole number from 1 to 100.',

  times: 'Times',
  allTimes: {
    reference: 'of a reference week',
    start: 'from a start',
    'ready-by': 'ready by a day',
  },
  moment: 'Day and time',
  momentHelp: 'A day and a time within the ten years that the program’s calendar knows.',
  backToWeek: 'Without a date',

  units: 'Amounts',
  allUnits: { metric: 'metric', US: 'US', both: 'both' },
  paper: 'Paper',
  allPaper: { A4: 'A4', Letter: 'US Letter' },

  other: 'Other levels, packs and prices, stock, tools, wage',
  along: '{level}, made along',
  alongHelp: 'A whole number from 1 to 10,000; empty for none.',
  part: 'Make',
  wholeModel: 'whole models',
  partAlone: '{part} alone',
  labour: 'Wage for one hour',
  labourHelp: 'An amount with its currency: 18 GBP/h.',

  shop: 'Packs, prices and stock',
  shopSays:
    'What your shops sell, the usual pack first; several with commas between. A price may be left out: sums then say “at least”.',
  material: 'Material',
  packs: 'Packs and prices',
  packsHelp: 'What a pack holds, “at”, its price: 500\u00a0g at 6.40\u00a0GBP, 1\u00a0kg at 11\u00a0GBP.',
  stock: 'On hand',
  stockHelp:
    'An amount in a unit that the material is sold in, or pieces of a size: 240\u00a0g; 2 x 450\u00a0mm x 300\u00a0mm.',
  tools: 'Tools you have',
  toolsHelp: 'A whole number from 0 to 10,000.',

  reset: 'As published',
  copy: 'Copy the address of this plan',
  copied: 'Copied. Whoever opens the address sees the same numbers.',
  copyHere: 'Copy it from here:',

  published: 'As published: {answer}',
  wrong: '{field}: {help}',
  unread: 'Not understood here, so left out: {list}.',
  working: 'Working it out … The numbers on this page are still those from before this change.',
  old: 'The numbers on this page are still those from before this change.',
  failed: 'This could not be worked out: a fault of this page.',
  notLoaded: 'The part of this page that works it out did not load.',
  sheets: 'The sheets follow what is set below; labels and patterns are as published.',
} as const;
