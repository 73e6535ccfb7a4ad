import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ToolRow } from '../../../../src/core/model/guide.ts';
import { jobTools } from '../../../../src/core/plan/schedule/job-tools.ts';
import { mostAtOnce, peakOf } from '../../../../src/core/plan/schedule/peak.ts';
import { mostByOne } from '../../../../src/core/plan/schedule/resources.ts';
import { aGuide, aStep, aToolRow, inOrder } from '../a-workspace.ts';
import { aJob, aWorkload } from './a-workload.ts';

describe('the most in use at once', () => {
  it('gives back what is returned at a minute before it is taken again in it', () => {
    expect(mostAtOnce([])).toBe(0);
    expect(mostAtOnce([{ from: 0, to: 5, count: 2 }, { from: 5, to: 9, count: 3 }])).toBe(3); // prettier-ignore
    expect(mostAtOnce([{ from: 0, to: 6, count: 2 }, { from: 5, to: 9, count: 3 }])).toBe(5); // prettier-ignore
  });

  it('is that of the busiest minute', () => {
    const use = fc
      .tuple(fc.nat(20), fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 3 }))
      .map(([from, length, count]) => ({ from, to: from + length, count }));
    fc.assert(
      fc.property(fc.array(use, { maxLength: 8 }), (uses) => {
        const inUse = (minute: number) =>
          uses.reduce((sum, { from, to, count }) => (from <= minute && minute < to ? sum + count : sum), 0);
        const minutes = Array.from({ length: 30 }, (_, minute) => inUse(minute));
        expect(mostAtOnce(uses)).toBe(Math.max(...minutes));
      }),
      { numRuns: 50 },
    );
  });
});

/** Melted four at a time, poured two at a time, unmoulded one by one. */
const steps = inOrder(
  aStep('melt', '5 min', '0 min', { for: { per: 'every', models: 4 } }),
  aStep('pour', '5 min', '0 min', { for: { per: 'every', models: 2 } }),
  aStep('unmould', '5 min'),
);
const lines = (tools: readonly ToolRow[], wanted = 4) =>
  aWorkload([aGuide('x', { steps, tools })], [{ guide: 'x', wanted }]).lines;

describe('the most of a tool that a schedule has in use', () => {
  const jobs = [
    aJob('melt', [1, 2, 3, 4], 0, 5),
    aJob('pour', [1, 2], 10, 15),
    aJob('pour', [3, 4], 20, 25),
    aJob('unmould', [3], 30, 35),
    aJob('unmould', [1], 30, 35),
    aJob('unmould', [2], 35, 40),
    aJob('unmould', [4], 50, 55),
  ];
  const peak = (...tools: readonly ToolRow[]) => peakOf('tin', lines(tools), jobs);

  it('counts what is in hand as long as hands are on', () => {
    expect(peak(aToolRow('tin', { in: ['pour'], count: 3 }))).toBe(3); //   10–15, 20–25
    expect(peak(aToolRow('tin', { in: ['unmould'], count: 3 }))).toBe(6); // two at 30–35
  });

  it('counts what is held from the first hands on a group to the last off it', () => {
    const held = { from: 'pour', to: 'unmould' };
    expect(peak(aToolRow('tin', { held }))).toBe(4); //           from 20 until 35
    expect(peak(aToolRow('tin', { held, holds: 2 }))).toBe(2); // 1 and 2: 10–40, 3 and 4: 20–55
    expect(peak(aToolRow('tin', { held, holds: 4, count: 3 }))).toBe(3);
    // 1 to 3 from 0 to 40, 4 from 0 to 55
    expect(peak(aToolRow('tin', { held: { from: 'melt', to: 'unmould' }, holds: 3 }))).toBe(2);
  });

  it('adds up the rows that name it, and leaves all others aside', () => {
    const held = aToolRow('tin', { held: { from: 'pour', to: 'pour' }, holds: 2 });
    const inHand = aToolRow('tin', { in: ['melt', 'pour'] });
    expect(peak(held, aToolRow('pot', { in: ['pour'], count: 9 }))).toBe(1);
    expect(peak(aToolRow('tin', { held: { from: 'melt', to: 'pour' }, holds: 4 }), inHand)).toBe(2);
    expect(peak(aToolRow('pot', { in: ['pour'] }))).toBe(0);
    // a hold that ends with a step that this level has not
    expect(peak(aToolRow('tin', { held: { from: 'melt', to: 'glue' } }))).toBe(0);
    expect(peakOf('tin', lines([inHand]), [aJob('pour', [1, 2], 0, 5, { line: 1 })])).toBe(0);
  });
});

describe('the tools of a run', () => {
  // melted for [1 2 3 4], poured for [1 2] and [3 4]
  const tools = [
    aToolRow('tin', { held: { from: 'melt', to: 'unmould' }, holds: 3, count: 2 }),
    aToolRow('spoon', { in: ['melt', 'pour'], count: 3 }),
    aToolRow('spoon', { in: ['melt'] }),
    aToolRow('knife', { in: ['unmould'] }),
  ];
  const { at } = lines(tools)[0]!;
  const toolsOf = (step: number, ...models: number[]) => jobTools(at, at.steps[step]!, models);

  it('are those in its hands, and those that its models are in', () => {
    // 1 to 3 are in one pair of tins, 4 in another
    expect(toolsOf(0, 1, 2, 3, 4)).toEqual({ tin: 4, spoon: 4 });
    expect(toolsOf(1, 1, 2)).toEqual({ tin: 2, spoon: 3 });
    expect(toolsOf(1, 3, 4)).toEqual({ tin: 4, spoon: 3 });
    expect(toolsOf(2, 4)).toEqual({ tin: 2, knife: 1 });
  });
});

describe('the most of a tool that a single run takes', () => {
  const most = (wanted: number, ...tools: readonly ToolRow[]) => mostByOne(lines(tools, wanted), 'tin');

  it('is a tin for each group of models in it: one for each of four that are melted together', () => {
    const held = { from: 'melt', to: 'unmould' };
    expect(most(4, aToolRow('tin', { held }))).toBe(4);
    expect(most(4, aToolRow('tin', { held, count: 2 }))).toBe(8);
    expect(most(3, aToolRow('tin', { held }))).toBe(3);
    // [1 2 3] [4 5 6] [7 8 9]: melting [1 2 3 4] and [5 6 7 8] takes two tins each
    expect(most(9, aToolRow('tin', { held, holds: 3 }))).toBe(2);
    expect(most(8, aToolRow('tin', { held, holds: 4 }))).toBe(1);
  });

  it('is what is in hand, however many models the run is for', () => {
    expect(most(4, aToolRow('tin', { in: ['melt'], count: 2 }))).toBe(2);
    expect(
      most(4, aToolRow('tin', { in: ['melt'], count: 2 }), aToolRow('tin', { in: ['melt', 'pour'] })),
    ).toBe(3);
    expect(most(4, aToolRow('tin', { in: ['melt'], count: 2 }), aToolRow('tin', { in: ['pour'] }))).toBe(2);
  });

  it('is nothing of another tool, or where no model is made', () => {
    expect(most(4, aToolRow('pot', { in: ['melt'], count: 2 }))).toBe(0);
    const finished = [{ guide: 'x', models: 4, past: [] }];
    const guide = aGuide('x', { steps, tools: [aToolRow('tin', { in: ['melt'] })] });
    const done = aWorkload([guide], [{ guide: 'x', wanted: 4 }], {}, { finished });
    expect(mostByOne(done.lines, 'tin')).toBe(0);
  });
});
