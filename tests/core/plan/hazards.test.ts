import { describe, expect, it } from 'vitest';
import type { Guide } from '../../../src/core/model/guide.ts';
import { planAt } from '../../../src/core/model/plan-at.ts';
import { stepHazards } from '../../../src/core/plan/scale/hazards.ts';
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
} from './a-workspace.ts';

// Codes: GHS Rev. 10, Annex 3 (H222 extremely flammable aerosol, H319 eye irritation, H290 corrodes metals).
const materials = [
  aMaterial('spray', { hazards: ['H229', 'H222'] }),
  aMaterial('alum', { hazards: ['H319'] }),
  aMaterial('lime', { hazards: ['H319'] }),
  aMaterial('powder'),
  aMaterial('balloon', { also: ['latex'] }),
];
const tools = [aTool('knife', { also: ['blade'] }), aTool('pot', { also: ['hot-surface'] }), aTool('ruler')];

function hazardsOf(guide: Partial<Guide>) {
  const whole = aGuide('x', guide);
  return stepHazards(planAt(whole), aWorkspace({ materials, tools, guides: [whole] }));
}
const withSteps = (...steps: Guide['steps'][number][]) => inOrder(...steps);

describe('what can hurt in a step', () => {
  it('comes from its materials, sorted, and is dangerous', () => {
    const [make] = hazardsOf({ materials: [aRow('spray', '10 mL'), aRow('balloon', '1')] });
    expect(make).toMatchObject({ hazards: ['H222', 'H229', 'latex'], dangerous: true, vapour: true });
    expect(make!.sources.map(({ kind, id }) => [kind, id])).toEqual([
      ['material', 'spray'],
      ['material', 'balloon'],
    ]);
  });

  it('is named once, however many things bring it', () => {
    const [make] = hazardsOf({
      materials: [aRow('alum', '1 g'), aRow('lime', '1 g')],
      tools: [aToolRow('knife', { in: ['make'] }), aToolRow('knife', { in: ['make'], count: 2 })],
    });
    expect(make!.hazards).toEqual(['H319', 'blade']);
    expect(make!.sources.map(({ id }) => id)).toEqual(['alum', 'lime', 'knife']);
  });

  it('is nothing where nothing used has a hazard, whatever the words say', () => {
    const [make] = hazardsOf({ steps: [aStep('burn-and-spray', '1 min')] });
    expect(make).toMatchObject({ hazards: [], dangerous: false, vapour: false, sources: [] });
  });

  it('travels with a mix to every step that uses it', () => {
    const paste = aMix('paste', '100 g', [
      { use: 'powder', amount: amount('90 g') },
      { use: 'alum', amount: amount('10 g') },
    ]);
    const found = hazardsOf({
      mixes: [paste],
      materials: [aRow('paste', '50 g')],
      steps: withSteps(
        aStep('weigh', '1 min', '0 min', { uses: [{ material: 'powder' }] }),
        aStep('mix', '1 min', '0 min', { uses: [{ material: 'paste' }] }),
        aStep('spread', '1 min', '0 min', { uses: [{ material: 'paste' }] }),
        aStep('dry', '1 min'),
      ),
    });
    expect(found.map(({ hazards }) => hazards)).toEqual([[], ['H319'], ['H319'], []]);
  });

  it('comes with the model of another guide, as far as somebody may react to it', () => {
    const lined = aGuide('vein', { materials: [aRow('balloon', '1'), aRow('spray', '10 mL')] });
    const nested = aGuide('arm', { materials: [aRow('guide:vein', '1')] });
    const pad = aGuide('pad', {
      materials: [aRow('guide:arm', '1', { id: 'arm' }), aRow('powder', '5 g')],
      steps: withSteps(
        aStep('weigh', '1 min', '0 min', { uses: [{ material: 'powder' }] }),
        aStep('lay-it-in', '1 min', '0 min', { uses: [{ material: 'arm' }] }),
      ),
    });
    const workspace = aWorkspace({ materials, tools, guides: [lined, nested, pad] });
    const found = stepHazards(planAt(pad), workspace);
    expect(found.map(({ hazards }) => hazards)).toEqual([[], ['latex']]);
    expect(found[1]).toMatchObject({ dangerous: true, vapour: false });
    expect(found[1]!.sources).toEqual([{ kind: 'material', id: 'balloon', hazards: ['latex'] }]);
  });

  it('of a part is not what cuts in it, nor what the step handles anyhow, nor what stands in a circle', () => {
    const all = [...materials, aMaterial('lancet', { also: ['blade', 'latex'] })];
    const arm = aGuide('arm', { materials: [aRow('lancet', '1'), aRow('balloon', '1')] });
    const layIn = (id: string, ...rows: readonly ReturnType<typeof aRow>[]) =>
      aGuide(id, { materials: [aRow('guide:arm', '1'), ...rows] });
    const sourcesOf = (guide: Guide, part: Guide) => {
      const workspace = aWorkspace({ materials: all, tools, guides: [part, guide] });
      return stepHazards(planAt(guide), workspace)[0]!.sources.map(({ id, hazards }) => [id, hazards]);
    };
    expect(sourcesOf(layIn('pad'), arm)).toEqual([
      ['lancet', ['latex']],
      ['balloon', ['latex']],
    ]);
    expect(sourcesOf(layIn('pad', aRow('lancet', '1')), arm)).toEqual([
      ['lancet', ['blade', 'latex']],
      ['balloon', ['latex']],
    ]);
    const around = aGuide('arm', { materials: [aRow('guide:pad', '1'), aRow('balloon', '1')] });
    expect(sourcesOf(layIn('pad'), around)).toEqual([]);
  });

  it('comes from tools in hand, and from held ones over every step of their hold', () => {
    const found = hazardsOf({
      tools: [
        aToolRow('pot', { held: { from: 'melt', to: 'pour' } }),
        aToolRow('knife', { in: ['trim'] }),
        aToolRow('ruler', { in: ['weigh'] }),
      ],
      steps: withSteps(
        aStep('weigh', '1 min'),
        aStep('melt', '1 min'),
        aStep('stir', '1 min'),
        aStep('pour', '1 min'),
        aStep('trim', '1 min'),
      ),
    });
    expect(found.map(({ hazards }) => hazards)).toEqual([
      [],
      ['hot-surface'],
      ['hot-surface'],
      ['hot-surface'],
      ['blade'],
    ]);
  });

  it('is heat above 45 °C, in either scale, and ignition', () => {
    const at = (value: string, unit: string) => ({ set: { heat: { text: '', heat: { value, unit } } } });
    const found = hazardsOf({
      steps: withSteps(
        aStep('warm', '1 min', '0 min', at('45', '°C')),
        aStep('hot', '1 min', '0 min', at('46', '°C')),
        aStep('us-warm', '1 min', '0 min', at('113', '°F')), // 45 °C
        aStep('us-hot', '1 min', '0 min', at('114', '°F')),
        aStep('in-words', '1 min', '0 min', { set: { heat: { text: 'simmer' } } }),
        aStep('flame', '1 min', '0 min', { ignition: true }),
      ),
    });
    expect(found.map(({ dangerous }) => dangerous)).toEqual([false, true, false, true, false, true]);
    expect(found[1]!.sources).toEqual([{ kind: 'heat', id: 'heat', hazards: [] }]);
  });

  it('passes over what the workspace lacks', () => {
    const tools = [aToolRow('nowhere', { in: ['make'] })];
    expect(hazardsOf({ materials: [aRow('nowhere', '1 g')], tools })[0]!.sources).toEqual([]);
  });
});
