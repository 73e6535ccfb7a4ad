import { describe, expect, it } from 'vitest';
import { howToJsonLd, isoDuration, scriptData } from '../../src/exports/how-to-json-ld.ts';
import { planOf } from '../core/plan/a-workspace.ts';
import { gelatinRoom } from '../core/plan/gelatin-block.ts';

const texts = {
  name: 'Needle block',
  description: 'A block. For training only, never for patient care.',
  makes: '4 models',
  version: '1.2.0',
  licence: 'CC-BY-4.0',
  supplies: [{ name: 'Gelatin', amount: '531 g' }],
  steps: [{ id: 'melt', name: 'Melt', text: 'WARNING: hot. Melt it.' }],
  tools: { pot: 'Stockpot' },
};
const plan = planOf(gelatinRoom, [{ guide: 'needle-block', wanted: 4 }], {});
const howTo = howToJsonLd(plan, texts, gelatinRoom.program);

/**
 * The terms that schema.org 23.0 has for each type, as far as they are used here (with those it inherits).
 * From a published copy of the vocabulary for HowTo, HowToItem, HowToSupply and HowToTool; the others from memory.
 */
const terms: Readonly<Record<string, readonly string[]>> = {
  HowTo: [
    'name',
    'description',
    'url',
    'inLanguage',
    'version',
    'license',
    'yield',
    'totalTime',
    'estimatedCost',
    'supply',
    'tool',
    'step',
  ],
  HowToSupply: ['name', 'requiredQuantity', 'estimatedCost'],
  HowToTool: ['name', 'requiredQuantity'],
  HowToStep: ['name', 'text', 'url', 'position'],
  MonetaryAmount: ['currency', 'value', 'minValue', 'maxValue'],
};

function* nodesOf(value: unknown): Generator<Record<string, unknown>> {
  if (Array.isArray(value)) for (const item of value) yield* nodesOf(item);
  else if (typeof value === 'object' && value !== null) {
    yield value as Record<string, unknown>;
    yield* nodesOf(Object.values(value));
  }
}

describe('a guide as schema.org’s HowTo', () => {
  it('uses only types and terms that schema.org has', () => {
    const nodes = [...nodesOf(howTo)];
    expect(nodes.length).toBeGreaterThan(4);
    const unknown = nodes.flatMap((node) =>
      Object.keys(node).filter((key) => !key.startsWith('@') && !terms[String(node['@type'])]?.includes(key)),
    );
    expect(unknown).toEqual([]);
  });

  it('says what it costs in the program’s currency: what the models use up, not the packs', () => {
    const used = plan.cost.each[0]!.used.mul(4);
    expect(howTo.estimatedCost).toMatchObject({ '@type': 'MonetaryAmount', currency: 'GBP' });
    expect(Math.abs(Number(howTo.estimatedCost['value']) - used.valueOf())).toBeLessThanOrEqual(0.005);
  });

  it('says a cost that is not wholly known as the least it can be', () => {
    const cost = { ...plan.cost, complete: false };
    const { estimatedCost } = howToJsonLd({ ...plan, cost }, texts, gelatinRoom.program);
    expect(estimatedCost).not.toHaveProperty('value');
    expect(estimatedCost).toHaveProperty('minValue');
  });

  it('has steps in their order, each with the way to it: from the page, or on the web where that is known', () => {
    expect(howTo.step).toEqual([
      {
        '@type': 'HowToStep',
        position: 1,
        name: 'Melt',
        text: 'WARNING: hot. Melt it.',
        url: '#step-melt',
      },
    ]);
    const address = 'https://skills.example.org/needle-block/index.html';
    const there = howToJsonLd(plan, { ...texts, address }, gelatinRoom.program);
    expect(there.step[0]!.url).toBe(`${address}#step-melt`);
  });

  it('leaves out what nobody said', () => {
    const bare = howToJsonLd(plan, { ...texts, version: '', licence: '' }, gelatinRoom.program);
    expect(bare).not.toHaveProperty('version');
    expect(bare).not.toHaveProperty('license');
    expect(bare).not.toHaveProperty('url');
  });
});

// ISO 8601-1 (2019), 5.5.2.2: PnYnMnDTnHnMnS, parts that are nought left out
it.each([
  [0, 'PT0M'],
  [5, 'PT5M'],
  [60, 'PT1H'],
  [61, 'PT1H1M'],
  [3270, 'PT54H30M'],
])('%i minutes are %s', (minutes, text) => {
  expect(isoDuration(minutes)).toBe(text);
});

it('no text can close the element that holds the data, and every text comes back', () => {
  const value = { name: '</script><!-- <script>', at: 'a & b' };
  const data = scriptData(value);
  expect(data).not.toContain('<');
  expect(JSON.parse(data)).toEqual(value);
});
