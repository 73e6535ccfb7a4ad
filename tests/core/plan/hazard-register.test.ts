import { describe, expect, it } from 'vitest';
import type { Guide } from '../../../src/core/model/guide.ts';
import { hazardsMet } from '../../../src/core/plan/scale/hazard-register.ts';
import { aGuide, aMaterial, aRow, aStep, aTool, aToolRow, aWorkspace, inOrder } from './a-workspace.ts';

// GHS Rev. 10, Annex 3: H225 highly flammable liquid, H319 eye irritation.
const materials = [
  aMaterial('glue', { hazards: ['H225'] }),
  aMaterial('alum', { hazards: ['H319'] }),
  aMaterial('felt'),
];
const tools = [aTool('knife', { also: ['blade'] })];
const uses = (...names: string[]) => ({ uses: names.map((material) => ({ material })) });
const warns = (id: string, ...steps: string[]) =>
  ({ id, signal: 'warning', steps, hazard: id, avoid: [] }) as const;

const met = (...guides: Guide[]) => hazardsMet(aWorkspace({ materials, tools, guides }));
const rows = (...guides: Guide[]) =>
  met(...guides).map(({ guide, level, step, source }) => [guide, level, step, source]);

describe('the hazards of a workspace', () => {
  it('are met guide by guide, step by step, with what is done against them there', () => {
    const pad = aGuide('pad', {
      materials: [aRow('glue', '5 mL'), aRow('felt', '1')],
      tools: [aToolRow('knife', { in: ['cut'] })],
      steps: inOrder(
        aStep('lay-out', '1 min', '0 min', uses('felt')),
        aStep('cut', '1 min', '0 min', { controls: ['cut-away'] }),
        aStep('stick', '1 min', '0 min', { ...uses('glue'), controls: ['air', 'gloves'] }),
      ),
      cautions: [warns('blade', 'cut'), warns('vapour', 'stick'), warns('mess', 'lay-out', 'stick')],
    });
    const block = aGuide('block', { materials: [aRow('alum', '2 g')] });
    const at = { guide: 'pad', level: undefined };
    expect(met(pad, block)).toEqual([
      {
        guide: 'block',
        level: undefined,
        step: 'make',
        kind: 'material',
        source: 'alum',
        controls: [],
        cautions: [],
      },
      { ...at, step: 'cut', kind: 'tool', source: 'knife', controls: ['cut-away'], cautions: ['blade'] },
      {
        ...at,
        step: 'stick',
        kind: 'material',
        source: 'glue',
        controls: ['air', 'gloves'],
        cautions: ['vapour', 'mess'],
      },
    ]);
  });

  it('are met at whatever level has them, once, at the usual level where it does', () => {
    const guide = aGuide('block', {
      levels: [
        { id: 'plain', name: 'Plain', usual: false },
        { id: 'layered', name: 'Layered', usual: true },
        { id: 'firm', name: 'Firm', usual: false },
      ],
      materials: [aRow('glue', '5 mL'), aRow('alum', '2 g')],
      steps: inOrder(
        aStep('harden', '1 min', '0 min', { ...uses('alum'), only: ['plain', 'firm'] }),
        aStep('stick', '1 min', '0 min', uses('glue', 'alum')),
      ),
    });
    // harden comes first in the guide, though the usual level has not got it
    expect(rows(guide)).toEqual([
      ['block', 'plain', 'harden', 'alum'],
      ['block', 'layered', 'stick', 'glue'],
      ['block', 'layered', 'stick', 'alum'],
    ]);
  });

  it('are told apart by what they come from, even in one step', () => {
    const hot = { heat: { text: '60 °C', heat: { value: '60', unit: '°C' } } };
    const guide = aGuide('block', {
      steps: [aStep('melt', '1 min', '0 min', { set: hot, ignition: true })],
      tools: [aToolRow('knife', { in: ['melt'] })],
    });
    expect(met(guide).map(({ kind, source }) => [kind, source])).toEqual([
      ['tool', 'knife'],
      ['heat', 'heat'],
      ['ignition', 'melt'],
    ]);
  });
});
