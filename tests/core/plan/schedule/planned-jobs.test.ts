import { describe, expect, it } from 'vitest';
import { stretchesOf } from '../../../../src/core/plan/schedule/back.ts';
import type { PlannedSchedule } from '../../../../src/core/plan/result.ts';
import { aGuide, aStep, aToolRow, aWorkspace, inOrder, planOf, time } from '../a-workspace.ts';

describe('the open time between two minutes', () => {
  const open = [[10, 20], [30, 40]] as const; // prettier-ignore

  it('is the part of each stretch that lies between them', () => {
    expect(stretchesOf({ open }, 15, 35)).toEqual([[15, 20], [30, 35]]); // prettier-ignore
    expect(stretchesOf({ open }, 0, 99)).toEqual([[10, 20], [30, 40]]); // prettier-ignore
    expect(stretchesOf({ open }, 12, 14)).toEqual([[12, 14]]);
    expect(stretchesOf({ open }, 20, 30)).toEqual([]);
  });

  it('goes on from one period into the next, in one stretch where they touch', () => {
    const weekly = { open, every: 40 };
    expect(stretchesOf(weekly, 35, 95)).toEqual([[35, 40], [50, 60], [70, 80], [90, 95]]); // prettier-ignore
    const always = { open: [[0, 20], [20, 40]] as const, every: 40 }; // prettier-ignore
    expect(stretchesOf(always, 35, 95)).toEqual([[35, 95]]);
    const evenings = { open: [[0, 10], [15, 20], [30, 40]] as const, every: 40 }; // prettier-ignore
    expect(stretchesOf(evenings, 0, 60)).toEqual([[0, 10], [15, 20], [30, 50], [55, 60]]); // prettier-ignore
  });
});

describe('who does what when', () => {
  function jobs(...[guide, wanted, program]: [Parameters<typeof aGuide>[1], number, object]) {
    const workspace = aWorkspace({ program, guides: [aGuide('x', guide)] });
    return (planOf(workspace, [{ guide: 'x', wanted }]).schedule as PlannedSchedule).jobs;
  }

  it('is told run by run, in order of start', () => {
    // [1 2] at 09:00; drying until 10:10 on the rack; packed one after the other by a builder alone
    const steps = inOrder(
      aStep('paint', '10 min', '0 min', {
        for: { per: 'batch' },
        wait: { usual: time('1 h'), ifRoom: {} },
        at: { bench: 1 },
      }),
      aStep('pack', '5 min'),
    );
    const tools = [aToolRow('brush', { in: ['paint'], count: 2 })];
    const one = { line: 0, people: 1, builders: [1], places: {}, tools: {} };
    expect(jobs({ steps, tools }, 2, { builders: 1 })).toEqual([
      {
        ...{ ...one, step: 'paint', run: 1, models: [1, 2], start: 540, end: 550, waitEnd: 610 },
        ...{ places: { bench: 1 }, tools: { brush: 2 } },
      },
      { ...one, step: 'pack', run: 1, models: [1], start: 610, end: 615, waitEnd: 615 },
      { ...one, step: 'pack', run: 2, models: [2], start: 615, end: 620, waitEnd: 620 },
    ]);
  });

  it('names no stretches for a machine that runs on at night', () => {
    const [print] = jobs({ steps: [aStep('print', '20 h', '0 min', { people: 0 })] }, 1, {});
    expect(print).not.toHaveProperty('stretches');
  });

  it('leaves each builder with one task where that can be', () => {
    // two benches, two steps, eight models of each: nobody goes from one to the other
    const steps = [aStep('cut', '10 min', '0 min', { at: { saw: 1 } }), aStep('sew', '10 min', '0 min', { at: { table: 1 } })]; // prettier-ignore
    const done = jobs({ steps }, 8, { stations: { saw: 1, table: 1 } });
    const buildersOf = (step: string) =>
      new Set(done.filter((job) => job.step === step).flatMap((job) => job.builders));
    expect([buildersOf('cut').size, buildersOf('sew').size]).toEqual([1, 1]);
  });
});
