/** Headings of the plan that the command line prints. */
export const planTextWords = {
  careful: 'Be careful',
  buy: 'Buy',
  costs: 'Costs',
  tools: 'Tools',
  schedule: 'Who does what when',
  warnings: 'Worth knowing',
  total: 'Whole packs',
  delivery: 'delivery',
  columns: { material: 'Material', needed: 'Needed', packs: 'Packs', cost: 'Cost', left: 'Left over' },
  inSteps: '({steps})',
  ofLine: '{line}: {text}',
  lineNumber: '({n})',
  lineIs: '({n}) {line}',
} as const;
