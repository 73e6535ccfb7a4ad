/** Headings of the plan that the command line prints. */
export const planTextWords = {
  careful: 'Be careful',
  buy: 'Buy',
  costs: 'Costs',
  tools: 'Tools',
  schedule: 'Who does what when',
  warnings: 'Worth knowing',
  columns: { material: 'Material', needed: 'Needed', packs: 'Packs', cost: 'Cost', left: 'Left over' },
  delivery: 'Delivery',
  total: 'Whole packs and delivery',
  notBought: 'Not bought',
  ofSupplier: '{supplier}, {when}',
  /** Of a plan for several guides, each has a number, which stands for it below. */
  lineNumber: '({n})',
  line: '({n}) {line}',
  ofLine: '{line}: {text}',
  inSteps: '{steps}. {text}',
} as const;
