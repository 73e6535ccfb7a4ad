import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { howMany, inFullRuns } from '../../../src/core/plan/demand/how-many.ts';
import { modelsServed, runsOf, sharedRuns } from '../../../src/core/plan/scale/runs.ts';
import { exact } from '../../../src/core/quantity/exact.ts';
import { planAt } from '../../../src/core/model/plan-at.ts';
import { aGuide, aToolRow } from './a-workspace.ts';

describe('how many are made', () => {
  // wanted, yield, spares: made = ceil(wanted / yield) + max(1, ceil(rate x wanted))
  it.each([
    [100, '1', '1/10', 110],
    [100, '1', '0', 100],
    [8, '1', '1/20', 9], //     0.4 spares: one at least
    [10, '9/10', '0', 12], //   11.1 of which 9 in 10 are good
    [10, '9/10', '1/10', 13],
    [3, '1/3', '0', 9], //      exact: never 10
    [1, '1', '1/10', 2],
  ])('%i wanted, %s good, %s spares: %i', (wanted, yields, rate, made) => {
    expect(howMany(wanted, 0, exact(yields), exact(rate)).enough).toBe(made);
  });

  it('counts no spares for what goes into other models: those have their own', () => {
    expect(howMany(0, 20, exact('1'), exact('1/10'))).toMatchObject({ wanted: 20, spares: 0, enough: 20 });
  });

  // 10 wanted, 1 spare, 9 good of 10 made
  it.each([
    [0, 0, 13], //  ceil(10 / 0.9) + 1
    [4, 4, 8], //   ceil(6 / 0.9) + 1
    [10, 10, 1],
    [11, 11, 0],
    [15, 11, 0], // the rest stays over
  ])('is less by the %i that are ready: %i of them count, %i are made', (ready, finished, enough) => {
    expect(howMany(10, 0, exact('9/10'), exact('1/10'), ready)).toEqual({
      wanted: 10,
      spares: 1,
      finished,
      enough,
    });
  });

  it('is never less than what is wanted and spare', () => {
    const share = fc.integer({ min: 1, max: 50 }).map((n) => exact(`${n}/50`));
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10_000 }), share, share, (wanted, yields, rate) => {
        const { spares, enough } = howMany(wanted, 0, yields, rate);
        return enough >= wanted + spares && spares >= 1;
      }),
    );
  });

  it('fills every run that is always full', () => {
    expect(inFullRuns(10, [])).toBe(10);
    expect(inFullRuns(10, [6])).toBe(12);
    expect(inFullRuns(12, [6])).toBe(12);
    expect(inFullRuns(10, [4, 6])).toBe(12);
    expect(inFullRuns(10, [4, 5, 6])).toBe(60);
  });
});

describe('runs', () => {
  it('serve consecutive models, and the last run what is left', () => {
    expect(runsOf(4, 10)).toEqual([
      [1, 2, 3, 4],
      [5, 6, 7, 8],
      [9, 10],
    ]);
  });

  it('serve a model, a part, what a tool holds, every K, or the batch', () => {
    const at = planAt(aGuide('x', { tools: [aToolRow('pot', { holds: 4 })] }));
    expect(modelsServed(at, { per: 'model' }, 10)).toBe(1);
    expect(modelsServed(at, { per: 'part', part: 'skin' }, 10)).toBe(1);
    expect(modelsServed(at, { per: 'tool', tool: 'pot' }, 10)).toBe(4);
    expect(modelsServed(at, { per: 'every', models: 6 }, 10)).toBe(6);
    expect(modelsServed(at, { per: 'batch' }, 10)).toBe(10);
  });

  it('of two steps are paired where they share a model, and only there', () => {
    const runs = fc.integer({ min: 1, max: 12 });
    fc.assert(
      fc.property(runs, runs, fc.integer({ min: 1, max: 40 }), (served, then, made) => {
        const [first, second] = [runsOf(served, made), runsOf(then, made)];
        const slow = first.flatMap((a, i) =>
          second.flatMap((b, j) => (a.some((model) => b.includes(model)) ? [[i, j]] : [])),
        );
        expect(sharedRuns(served, then, made)).toEqual(slow);
      }),
    );
  });
});
