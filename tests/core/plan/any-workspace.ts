import fc from 'fast-check';
import type { Basis, Guide, MaterialRow, Step, ToolRow } from '../../../src/core/model/guide.ts';
import type { Material } from '../../../src/core/model/material.ts';
import type { WorkingHours } from '../../../src/core/model/program.ts';
import type { Workspace } from '../../../src/core/model/workspace.ts';
import {
  aGuide,
  aMaterial,
  aMix,
  aRow,
  aStep,
  aToolRow,
  aWorkspace,
  amount,
  money,
  pack,
  time,
} from './a-workspace.ts';

/** Random small workspaces: one guide of two to five steps, with mixes, places, tools, limits, vapour and flames. */

const minutes = (most: number) => fc.integer({ min: 0, max: most }).map((n) => `${n} min`);
/** Left out one time in so many. */
const some = <T>(value: fc.Arbitrary<T>, oneIn = 2) => fc.option(value, { nil: undefined, freq: oneIn });

const hours: fc.Arbitrary<WorkingHours> = fc.constantFrom<WorkingHours>(
  {
    days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'],
    hours: [
      [540, 750],
      [780, 1020],
    ],
    closed: [],
  },
  { days: ['Tue', 'Thu'], hours: [[600, 840]], closed: [] },
  { days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'], hours: [[0, 1440]], closed: [] },
);

const basis: fc.Arbitrary<Basis> = fc.oneof(
  { weight: 3, arbitrary: fc.constant<Basis>({ per: 'model' }) },
  fc.integer({ min: 2, max: 4 }).map((models): Basis => ({ per: 'every', models })),
  fc.constant<Basis>({ per: 'tool', tool: 'pot' }),
  fc.constant<Basis>({ per: 'batch' }),
);

function anyStep(index: number): fc.Arbitrary<Step> {
  return fc
    .record({
      once: minutes(20),
      each: minutes(8),
      for: basis,
      people: fc.constantFrom(0, 1, 1, 1, 2),
      wait: some(minutes(90)),
      watched: fc.boolean(),
      place: some(fc.constantFrom('bench', 'stove')),
      shelf: some(fc.constantFrom<'model' | 'run'>('model', 'run'), 3),
      limit: some(fc.integer({ min: 120, max: 400 }), 4),
      mayPause: fc.boolean(),
      ignition: fc.integer({ min: 0, max: 4 }).map((n) => n === 0),
      before: fc.subarray(
        Array.from({ length: index }, (_, i) => `step-${i}`),
        { minLength: Math.min(1, index) },
      ),
    })
    .map(({ once, each, wait, place, shelf, limit, before, ...more }) =>
      aStep(`step-${index}`, once, each, {
        ...more,
        ...(wait === undefined ? {} : { wait: { usual: time(wait), ifRoom: {} } }),
        at: place === undefined ? {} : { [place]: 1 },
        waitsAt: shelf === undefined ? {} : { shelf: { count: 1, per: shelf } },
        useWithin: { byStep: {}, ...(limit === undefined ? {} : { any: time(`${limit} min`) }) },
        clearsIn: time('10 min'),
        after: before,
      }),
    );
}

const share = fc.constantFrom('0', '1/20', '1/10', '1/3');
const materials: fc.Arbitrary<readonly Material[]> = fc
  .record({
    small: fc.integer({ min: 1, max: 900 }),
    large: fc.integer({ min: 1, max: 3000 }),
    vapour: fc.boolean(),
  })
  .map(({ small, large, vapour }) => [
    aMaterial('felt', {
      packs: [
        pack('70 g', `${small / 100} GBP`, { from: 'near' }),
        pack('250 g', `${large / 100} GBP`, { from: 'far' }),
      ],
    }),
    aMaterial('glue', {
      packs: [pack('45 g', '3.99 GBP', { from: 'far' })],
      hazards: vapour ? ['H225'] : [],
    }),
    aMaterial('powder', { packs: [pack('500 g', '6.40 GBP')] }),
    aMaterial('water', { free: true }),
  ]);

const rows: fc.Arbitrary<readonly MaterialRow[]> = fc
  .record({
    felt: fc.integer({ min: 1, max: 300 }),
    glue: fc.integer({ min: 1, max: 50 }),
    waste: share,
    for: basis,
    does: some(fc.integer({ min: 2, max: 12 }), 3),
  })
  .map(({ felt, glue, waste, for: per, does }) => [
    aRow('felt', `${felt} g`, { waste, for: per }),
    aRow('glue', `${glue}–${glue + 9} g`, does === undefined ? { waste } : { does }),
    aRow('gel', '200 mL', { waste }),
  ]);

/** Each row is named by one step; the mix by two. */
function named(steps: readonly Step[], picks: readonly number[]): readonly Step[] {
  const at = (pick: number): number => pick % steps.length;
  return steps.map((step, i) => ({
    ...step,
    uses: ['felt', 'glue', 'gel', 'gel']
      .filter((_, row) => at(picks[row]!) === i)
      .map((material) => ({ material })),
  }));
}

const tools = (steps: number): fc.Arbitrary<readonly ToolRow[]> =>
  fc
    .record({ holds: fc.integer({ min: 1, max: 4 }), inHand: fc.integer({ min: 0, max: steps - 1 }) })
    .map(({ holds, inHand }) => [
      aToolRow('pot', { holds, held: { from: 'step-0', to: 'step-0' } }),
      aToolRow('knife', { in: [`step-${inHand}`] }),
    ]);

const guide: fc.Arbitrary<Guide> = fc.integer({ min: 2, max: 5 }).chain((count) =>
  fc
    .record({
      steps: fc.tuple(...Array.from({ length: count }, (_, i) => anyStep(i))),
      picks: fc.tuple(fc.nat(4), fc.nat(4), fc.nat(4), fc.nat(4)),
      rows,
      left: share,
      tools: tools(count),
      yields: fc.constantFrom('1', '9/10', '1/2'),
    })
    .map(({ steps, picks, rows: materialRows, left, tools: toolRows, yields }) =>
      aGuide('thing', {
        steps: named(steps, picks),
        materials: materialRows,
        mixes: [
          aMix(
            'gel',
            '1 L',
            [
              { use: 'powder', amount: amount('80–100 g', '90 g') },
              { use: 'water', amount: amount('900 mL') },
            ],
            left,
          ),
        ],
        tools: toolRows,
        yields,
        lasts: '8',
        keeps: [{ for: time('5 d'), at: 'fridge' }],
      }),
    ),
);

export const anyWorkspace: fc.Arbitrary<Workspace> = fc
  .record({
    guide,
    materials,
    work: hours,
    builders: fc.integer({ min: 2, max: 3 }),
    knives: fc.integer({ min: 1, max: 2 }),
    shelf: fc.integer({ min: 3, max: 6 }),
  })
  .map(({ guide: thing, materials: known, work, builders, knives, shelf }) =>
    aWorkspace({
      program: {
        work,
        builders,
        stations: { bench: 2, stove: 1, shelf },
        owned: { knife: knives, pot: 2 },
        labour: money('18 GBP'),
        suppliers: {
          near: { name: 'near', delivery: money('2 GBP'), arrivesIn: time('2 working days') },
          far: { name: 'far', delivery: money('5 GBP'), freeOver: money('40 GBP'), arrivesIn: time('30 h') },
        },
      },
      materials: known,
      guides: [thing],
    }),
  );
