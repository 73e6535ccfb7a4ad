import { scheduleWords } from './schedule.ts';
import { whatIfWords } from './what-if.ts';

/** Headings of the plan that the command line prints. */
export const planTextWords = {
  careful: 'Be careful',
  buy: 'Buy',
  cutting: 'Cut',
  costs: 'Costs',
  curve: whatIfWords.curve.heading,
  tools: 'Tools',
  schedule: 'Who does what when',
  decides: scheduleWords.chain.heading,
  ready: scheduleWords.ready.heading,
  loads: scheduleWords.loads.short,
  whatIf: whatIfWords.changes.heading,
  warnings: 'Worth knowing',
  columns: { material: 'Material', needed: 'Needed', packs: 'Packs', cost: 'Cost', left: 'Left over' },
  sizes: {
    models: whatIfWords.curve.models,
    each: whatIfWords.curve.each,
    note: whatIfWords.curve.note,
  },
  delivery: 'Delivery',
  total: 'Whole packs and delivery',
  notBought: 'Not bought',
  ofSupplier: '{supplier}, {when}',
  /** Of a plan for several guides, each has a number, which stands for it below. */
  lineNumber: '({n})',
  line: '({n}) {line}',
  ofLine: '{line}: {text}',
  inSteps: '{steps}. {text}',
  /** A material that is cut; below it each kind of its sheets. */
  cutMaterial: '{material}: {used}',
  cutNotLeast: '{head}. {bound}',
  cutOthers: 'The others: {says}',
} as const;
