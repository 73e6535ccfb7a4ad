import type { GuideView } from '../../templates/guide/guide-view.ts';
import type { Site } from '../../templates/page/site.ts';
import type { ShownGuide } from '../../src/showing/library/show-guide.ts';
import { type Shown, shown } from '../../src/showing/shown/shown.ts';
import type { ShownCaution, ShownLine, ShownPlan, ShownStep } from '../../src/showing/shown/shown-plan.ts';

/** Views made by hand, so that a template is seen with what a demo happens not to have. */
export const site: Site = {
  program: 'Practice Room',
  language: 'en-GB',
  places: [
    { id: 'guides', path: 'index.html' },
    { id: 'safety', path: 'safety/index.html' },
  ],
  defers: 'Local policy first (ask the safety lead), then the data sheet.',
};

export const text = (words: string): Shown => shown(words.slice(0, 12), words);
const nothing = text('');

export const hotGlue: ShownCaution = {
  id: 'hot-glue',
  signal: 'warning',
  word: text('WARNING'),
  hazard: text('Hot glue sticks to skin.'),
  harm: text('Deep burns.'),
  avoid: [text('Keep cold water at hand.')],
  steps: text('Step 1'),
};

export const step: ShownStep = {
  id: 'glue-it',
  number: text('1'),
  heading: text('Glue it'),
  begins: text('day 1, 09:00'),
  runs: nothing,
  times: [
    { kind: 'hands-on', time: text('5 min'), note: text('hands-on') },
    { kind: 'wait', time: text('1 h'), note: text('wait') },
  ],
  takes: [
    {
      use: 'felt',
      amount: text('12'),
      unit: text('g'),
      name: text('Felt'),
      note: nothing,
      total: text('12 g'),
    },
  ],
  settings: [{ name: text('heat'), value: text('60 °C') }],
  controls: [text('Wear heat-proof gloves')],
  cautions: [hotGlue],
  hazards: [text('Glue: irritates')],
  limit: text('Hands off the next step within 45 min.'),
  notBefore: text('next step not before day 1, 10:05'),
  also: [],
  tickTimes: [],
};

export const line: ShownLine = {
  guide: 'strap',
  title: text('Practice strap'),
  count: text('4 to make'),
  models: text('4 models'),
  facts: [{ id: 'keeps', name: text('Keeps'), value: text('5 days') }],
  materials: [
    {
      id: 'felt',
      material: 'felt',
      leadsTo: 'materials/index.html#material-felt',
      name: text('Felt'),
      must: text('wool'),
      one: text('3 g'),
      total: text('12 g'),
      note: nothing,
    },
  ],
  steps: [step],
  cautions: [hotGlue],
  links: {},
};

export const plan: ShownPlan = {
  title: text('Practice strap: 4 models'),
  facts: [{ id: 'build-time', name: text('Build time'), value: text('1 h 5 min') }],
  trainingOnly: text('For training only, never for patient care.'),
  defers: text('Local policy first.'),
  defersAtStep: text('Policy first, at each step.'),
  lines: [line],
  shopping: { rows: [], deliveries: [], total: text('£0.00'), notes: [] },
  cutting: [],
  costs: [
    {
      id: 'used',
      name: text('Used'),
      means: text('what ends in one model'),
      each: [{ of: nothing, sum: text('£1.20') }],
    },
  ],
  tools: [
    {
      id: 'scissors',
      name: text('Scissors'),
      dangers: text('A sharp blade, cuts'),
      need: text('1 at once'),
      owned: nothing,
    },
  ],
  schedule: {
    none: nothing,
    helps: [],
    says: nothing,
    backwards: nothing,
    buildTime: nothing,
    ready: [],
    bound: nothing,
    models: [],
    decides: [],
    loads: [],
    days: [],
    strip: { rows: [], closed: [], ticks: [] },
  },
  warnings: [],
};

export const guide: ShownGuide = {
  id: 'strap',
  title: text('Practice strap'),
  status: 'approved',
  summary: text('A strap to sew.'),
  trains: text('sewing'),
  version: text('version 1.0.0'),
  number: text('1.0.0'),
  approval: nothing,
  licence: text('CC-BY-4.0'),
  electrosurgery: text('No electrosurgery on this model.'),
  checks: [],
  inUse: [],
  history: [],
  sources: [],
};

export const view: GuideView = {
  site,
  root: '../../',
  guide,
  plan,
  line,
  batch: '4 models',
  levels: [],
  before: [],
  steps: {},
  after: [],
  pictures: {},
  sheetHref: 'bench-sheet/index.html',
};
