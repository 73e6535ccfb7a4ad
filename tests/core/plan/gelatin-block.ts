import type { Guide } from '../../../src/core/model/guide.ts';
import type { Workspace } from '../../../src/core/model/workspace.ts';
import {
  aGuide,
  aMaterial,
  aMix,
  aRow,
  aStep,
  aTool,
  aToolRow,
  aWorkspace,
  amount,
  inOrder,
  money,
  pack,
  time,
} from './a-workspace.ts';

/**
 * An invented block of gel with a tube in it, for the tests: melted four at a time in one pot, poured into tins of
 * which there are six, chilled for twelve hours.
 */
export const needleBlock: Guide = aGuide('needle-block', {
  title: 'Needle block',
  lasts: '8',
  keeps: [
    { for: time('1 d'), at: 'room' },
    { for: time('5 d'), at: 'fridge' },
  ],
  mixes: [
    aMix(
      'gel',
      '1.2 L',
      [
        { use: 'gelatin-powder', amount: amount('120 g') },
        { use: 'water', amount: amount('1080 mL') },
        { use: 'psyllium', amount: amount('8–14 g', '10 g'), until: 'grey' },
      ],
      '1/20',
    ),
  ],
  materials: [
    aRow('gel', '1.2 L', { waste: '1/20' }),
    aRow('tube', '180 mm', { waste: '0' }),
    aRow('oil-spray', '400 mL', { does: 30 }),
  ],
  tools: [
    aToolRow('stockpot', { holds: 4, held: { from: 'melt', to: 'pour' } }),
    aToolRow('loaf-tin', { held: { from: 'pour', to: 'unmould' } }),
    aToolRow('scale', { in: ['weigh-out'] }),
  ],
  steps: inOrder(
    aStep('weigh-out', '10 min', '0 min', {
      for: { per: 'batch' },
      uses: [{ material: 'gelatin-powder' }, { material: 'psyllium' }],
    }),
    aStep('melt', '4 min', '1 min', {
      for: { per: 'tool', tool: 'stockpot' },
      at: { stove: 1 },
      wait: { usual: time('20 min'), ifRoom: {} },
      watched: true,
      waitsAt: { stove: { count: 1, per: 'run' } },
      useWithin: { any: time('45 min'), byStep: {} },
      uses: [{ material: 'gel' }],
      set: { heat: { text: '60 °C', heat: { value: '60', unit: '°C' } } },
    }),
    aStep('pour', '0 min', '3 min', {
      for: { per: 'tool', tool: 'stockpot' },
      wait: { usual: time('12 h'), ifRoom: { damp: time('14 h') } },
      waitsAt: { 'fridge-shelf': { count: 1, per: 'model' } },
      uses: [{ material: 'gel' }, { material: 'tube' }, { material: 'oil-spray' }],
    }),
    aStep('unmould', '5 min'),
  ),
  states: { for: 4, builders: 1 },
});

export const gelatinRoom: Workspace = aWorkspace({
  program: {
    labour: money('18 GBP'),
    stations: { stove: 1, 'fridge-shelf': 12 },
    owned: { 'loaf-tin': 6, stockpot: 1, scale: 1 },
    suppliers: {
      'craft-shop': {
        name: 'a craft shop',
        delivery: money('4.95 GBP'),
        freeOver: money('40 GBP'),
        arrivesIn: time('3 working days'),
      },
    },
  },
  materials: [
    aMaterial('gelatin-powder', {
      name: 'Gelatin powder',
      packs: [pack('500 g', '6.40 GBP', { from: 'craft-shop' })],
    }),
    aMaterial('psyllium', { packs: [pack('100 g', '2.50 GBP')] }),
    aMaterial('water', { free: true }),
    aMaterial('tube', { form: 'length', packs: [pack('1 m', '1.80 GBP')] }),
    aMaterial('oil-spray', {
      name: 'Oil spray',
      hazards: ['H222', 'H229'],
      packs: [pack('400 mL', '4.20 GBP')],
    }),
  ],
  tools: [
    aTool('stockpot', { price: money('24 GBP'), lasts: '500' }),
    aTool('loaf-tin', { price: money('7.50 GBP'), lasts: '300' }),
    aTool('scale', { price: money('20 GBP') }),
  ],
  guides: [needleBlock],
});
