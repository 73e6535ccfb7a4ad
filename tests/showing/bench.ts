import type { Guide } from '../../src/core/model/guide.ts';
import type { Material } from '../../src/core/model/material.ts';
import type { Tool } from '../../src/core/model/tool.ts';
import type { Workspace } from '../../src/core/model/workspace.ts';
import { aProgram, aStep } from '../core/plan/a-workspace.ts';

/** A small invented workspace: a gel block made in pots of four. */
const program = aProgram({
  labour: { amount: '18', currency: 'GBP' },
  stations: { stove: 1 },
  owned: { stockpot: 1 },
  suppliers: {
    'craft-shop': {
      name: 'a craft shop',
      delivery: { amount: '99/20', currency: 'GBP' },
      arrivesIn: { workingDays: 3 },
    },
  },
});

const material = (id: string, name: string, rest: Partial<Material>): Material => ({
  id,
  name,
  must: [],
  form: 'bulk',
  packs: [],
  free: false,
  keeps: {},
  times: {},
  hazards: [],
  precautions: [],
  also: [],
  notWith: [],
  instead: [],
  ...rest,
});

const gelatin = material('gelatin-powder', 'Gelatin powder', {
  must: ['bloom 200–250', 'unflavoured'],
  packs: [
    {
      holds: { count: 1, each: { value: '500', unit: 'g' } },
      price: { amount: '32/5', currency: 'GBP' },
      from: 'craft-shop',
    },
  ],
});
const water = material('water', 'Water', { free: true });
const felt = material('felt-3mm', 'Felt, 3 mm', {
  form: 'sheet',
  packs: [
    {
      holds: {
        count: 5,
        each: {
          sides: [
            { value: '450', unit: 'mm' },
            { value: '300', unit: 'mm' },
          ],
        },
      },
      from: 'craft-shop',
    },
  ],
});
const spray = material('oil-spray', 'Oil spray', {
  hazards: ['H222', 'H229', 'H999'],
  packs: [
    {
      holds: { count: 1, each: { value: '400', unit: 'mL' } },
      price: { amount: '21/5', currency: 'GBP' },
      from: 'craft-shop',
      arrivesIn: { seconds: '172800' },
    },
  ],
});

const tool = (id: string, name: string, rest: Partial<Tool> = {}): Tool => ({ id, name, also: [], ...rest });

const step = (id: string, rest: Partial<Guide['steps'][number]>) => aStep(id, '10 min', '0 min', rest);

const place = { line: 1, column: 1, length: 1 };
const section = (heading: string, id: string): Guide['prose']['sections'][number] => ({
  heading,
  slug: id,
  step: id,
  has: [],
  at: place,
});

export const gelBlock: Guide = {
  id: 'gel-block',
  title: 'Gel block',
  status: 'draft',
  levels: [
    { id: 'shallow', name: 'Shallow vessel', usual: true },
    { id: 'deep', name: 'Deep vessel', usual: false },
  ],
  parts: [],
  lasts: '8',
  keeps: [{ for: { seconds: '432000' }, at: 'fridge', how: 'covered' }],
  mixes: [
    {
      id: 'gel',
      name: 'Gel',
      makes: { value: '1200', unit: 'mL' },
      leftBehind: '1/20',
      of: [
        {
          use: 'gelatin-powder',
          amount: { least: '120', usual: '120', most: '120', unit: 'g' },
          until: 'clear',
        },
        { use: 'water', amount: { least: '1080', usual: '1080', most: '1080', unit: 'mL' } },
      ],
    },
  ],
  materials: [
    {
      id: 'gel',
      use: 'gel',
      amount: { least: '6/5', usual: '6/5', most: '6/5', unit: 'L' },
      pieces: [],
      waste: '1/20',
      for: { per: 'model' },
    },
    {
      id: 'felt-3mm',
      use: 'felt-3mm',
      pieces: [
        {
          id: 'skin',
          size: {
            sides: [
              { value: '150', unit: 'mm' },
              { value: '100', unit: 'mm' },
            ],
          },
          count: 2,
          turn: true,
        },
      ],
      waste: '0',
      for: { per: 'model' },
    },
    {
      id: 'oil-spray',
      use: 'oil-spray',
      amount: { least: '400', usual: '400', most: '400', unit: 'mL' },
      pieces: [],
      waste: '0',
      for: { per: 'model' },
      does: 30,
    },
  ],
  patterns: [],
  tools: [
    { use: 'stockpot', count: 1, holds: 4, held: { from: 'melt-the-gel', to: 'pour-the-gel' }, in: [] },
    { use: 'scale', count: 1, holds: 1, in: ['melt-the-gel'] },
    { use: 'jug', count: 1, holds: 1, in: [] },
  ],
  steps: [
    step('cut-the-skins', {
      handsOn: { once: { seconds: '120' }, each: { seconds: '90' } },
      uses: [{ material: 'felt-3mm', pieces: ['skin'] }, { material: 'oil-spray' }],
      controls: ['cutting-mat', 'keep the blade short'],
      clearsIn: { seconds: '1800' },
    }),
    step('melt-the-gel', {
      for: { per: 'tool', tool: 'stockpot' },
      handsOn: { once: { seconds: '240' }, each: { seconds: '60' } },
      at: { stove: 1 },
      wait: { usual: { seconds: '1200' }, ifRoom: {} },
      watched: true,
      useWithin: { any: { seconds: '2700' }, byStep: {} },
      after: [],
      uses: [{ material: 'gelatin-powder' }, { material: 'water' }],
      set: { heat: { text: '60 °C', heat: { value: '60', unit: '°C' } } },
      controls: ['heat-gloves'],
      ignition: true,
    }),
    step('pour-the-gel', {
      for: { per: 'tool', tool: 'stockpot' },
      wait: { usual: { seconds: '43200' }, ifRoom: {} },
      after: ['cut-the-skins', 'melt-the-gel'],
      uses: [{ material: 'gel' }],
    }),
  ],
  checks: [],
  cautions: [
    { id: 'fridge', signal: 'notice', steps: [], hazard: 'blocks look like food', avoid: ['label them'] },
    {
      id: 'hot-gel',
      signal: 'warning',
      steps: ['melt-the-gel', 'pour-the-gel'],
      hazard: 'hot gel sticks to skin',
      harm: 'burns',
      avoid: ['heat-proof gloves, long sleeves', 'Nobody in reach of the pot handle.'],
    },
  ],
  inUse: { renew: [] },
  yields: '1',
  electrosurgery: { allowed: false, said: true },
  history: [],
  sources: [],
  prose: {
    sections: [
      { heading: '', slug: 'before', has: [], at: place },
      section('Cut the skins', 'cut-the-skins'),
      section('Melt the gel', 'melt-the-gel'),
      section('Pour the gel', 'pour-the-gel'),
    ],
    links: [
      { kind: 'material', target: 'gelatin-powder', text: '120 g of gelatin', section: 0, at: place },
      { kind: 'material', target: 'gelatin-powder', text: '480 g of gelatin', section: 2, at: place },
      { kind: 'material', target: 'felt-3mm', text: '150 mm x 100 mm of felt', section: 1, at: place },
      { kind: 'material', target: 'felt-3mm', text: '2 skins', section: 1, at: place },
      { kind: 'set', target: 'heat', text: '60 C', section: 2, at: place },
      { kind: 'tool', target: 'scale', text: 'the scale', section: 2, at: place },
    ],
    images: [],
  },
};

export const bench: Workspace = {
  program,
  materials: Object.fromEntries([gelatin, water, felt, spray].map((one) => [one.id, one])),
  tools: Object.fromEntries(
    [
      tool('stockpot', 'Stockpot', { also: ['hot-surface'] }),
      tool('scale', 'Kitchen scale', { reads: { value: '1', unit: 'g' } }),
      tool('jug', 'Jug', { reads: { value: '10', unit: 'mL' } }),
    ].map((one) => [one.id, one]),
  ),
  guides: { 'gel-block': gelBlock },
  modules: {},
};
