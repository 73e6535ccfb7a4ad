import { describe, expect, it } from 'vitest';
import { allergens } from '../../../../src/core/model/material.ts';
import { metIn, sharps } from '../../../../src/core/plan/cohort/met.ts';
import { read } from '../../../../src/reading/read.ts';
import { baseFiles } from '../../../reading/base-workspace.ts';
import { aModule, aStation } from './a-module.ts';

const base = read(baseFiles).workspace!;
const block = base.guides['needle-block']!;
const models = [{ guide: 'needle-block', uses: 1, share: 'mixed' as const, besides: {} }];
const latex = { ...base.materials['label']!, also: ['latex' as const] };
const ids = (met: ReturnType<typeof metIn>): readonly string[] => met.map(({ id }) => id);

describe('what people of a session meet', () => {
  it('is in the models of its stations, what they are mixed from included', () => {
    const module = aModule({ stations: [aStation('a', { models })] });
    expect(metIn(module, base, allergens)).toEqual([
      { kind: 'material', id: 'gelatin-powder', also: ['animal-tissue'] },
    ]);
  });

  it('is not what another level of the guide is made of', () => {
    const rows = block.materials.map((row) => (row.use === 'label' ? { ...row, only: ['deep'] } : row));
    const workspace = {
      ...base,
      materials: { ...base.materials, label: latex },
      guides: { 'needle-block': { ...block, materials: rows } },
    };
    const at = (level: string) =>
      aModule({ stations: [aStation('a', { models: [{ ...models[0]!, level }] })] });
    expect(ids(metIn(at('shallow'), workspace, allergens))).toEqual(['gelatin-powder']);
    expect(ids(metIn(at('deep'), workspace, allergens))).toEqual(['gelatin-powder', 'label']);
  });

  it('is in models of other guides within the model, even where these go round in a circle', () => {
    const within = [...block.materials, { ...block.materials[0]!, id: 'insert', use: 'guide:insert' }];
    const insert = {
      ...block,
      id: 'insert',
      mixes: [],
      materials: [{ ...block.materials[0]!, use: 'label' }],
    };
    const back = [...insert.materials, { ...insert.materials[0]!, id: 'block', use: 'guide:needle-block' }];
    const workspace = {
      ...base,
      materials: { ...base.materials, label: latex },
      guides: {
        'needle-block': { ...block, materials: within.filter(({ use }) => use !== 'label') },
        insert: { ...insert, materials: back },
      },
    };
    const module = aModule({ stations: [aStation('a', { models })] });
    expect(ids(metIn(module, workspace, allergens))).toEqual(['gelatin-powder', 'label']);
  });

  it('is what a model takes in use, and the tools of a station, not those of the bench', () => {
    const inUse = { ...block.inUse, between: { uses: [{ material: 'label', amount: oneOf }] } };
    const workspace = {
      ...base,
      materials: { ...base.materials, label: { ...latex, also: ['needle' as const] } },
      tools: {
        ...base.tools,
        scale: { ...base.tools['scale']!, also: ['blade' as const] },
        stockpot: { ...base.tools['stockpot']!, also: ['blade' as const] },
      },
      guides: { 'needle-block': { ...block, inUse } },
    };
    const tools = [{ use: 'scale', count: 1, each: 'station' as const }];
    const module = aModule({ stations: [aStation('a', { models, tools })] });
    expect(ids(metIn(module, workspace, sharps))).toEqual(['label', 'scale']);
  });

  it('is nothing of a guide that is not there', () => {
    const lost = aModule({ stations: [aStation('a', { models: [{ ...models[0]!, guide: 'no-such' }] })] });
    expect(metIn(lost, base, allergens)).toEqual([]);
  });
});

const oneOf = { least: '1', usual: '1', most: '1', unit: 'g' } as const;
