import { describe, expect, it } from 'vitest';
import { Bug } from '../../../../src/core/diagnostic.ts';
import { assignCrew } from '../../../../src/core/solve/schedule/crew.ts';

/** `work(0, 10, 'pads')`. */
const tasks = ['pads', 'gel', 'frame'];
const work = (start: number, end: number, task: string, people = 1) => ({
  start,
  end,
  people,
  task: tasks.indexOf(task),
});

describe('builders', () => {
  it('stay at their task as long as there is more of it', () => {
    const day = [
      work(0, 10, 'pads'),
      work(5, 15, 'gel'),
      work(10, 20, 'pads'),
      work(15, 25, 'gel'),
      work(20, 30, 'pads'),
    ];
    expect(assignCrew(day, 2)).toEqual([[1], [2], [1], [2], [1]]);
  });

  it('begin a new task when they have nothing left of the old one', () => {
    // builder 1 has more pads to do; builder 2 has done with gel
    const day = [work(0, 10, 'pads'), work(0, 5, 'gel'), work(12, 20, 'frame'), work(20, 30, 'pads')];
    expect(assignCrew(day, 2)).toEqual([[1], [2], [2], [1]]);
  });

  it('work together where a step takes several', () => {
    expect(assignCrew([work(0, 10, 'pads', 2), work(10, 20, 'gel')], 3)).toEqual([[1, 2], [1]]);
  });

  it('are named by number, whoever came first', () => {
    // builder 2 is at pads already, builder 1 joins
    const day = [work(0, 10, 'gel'), work(0, 10, 'pads'), work(10, 20, 'pads', 2)];
    expect(assignCrew(day, 2)).toEqual([[1], [2], [1, 2]]);
    const many = [work(0, 5, 'gel', 11), work(0, 5, 'pads'), work(5, 9, 'pads', 12)];
    expect(assignCrew(many, 12).at(-1)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
  });

  it('begin a new task when they have had none yet, sooner than in the middle of another', () => {
    const day = [work(0, 10, 'pads'), work(10, 20, 'gel'), work(20, 30, 'pads')];
    expect(assignCrew(day, 2)).toEqual([[1], [2], [1]]);
  });

  it('are not needed by a machine', () => {
    expect(assignCrew([work(0, 10, 'pads', 0)], 1)).toEqual([[]]);
  });

  it('are never in two places: that would be our own fault', () => {
    expect(() => assignCrew([work(0, 10, 'pads'), work(5, 15, 'gel')], 1)).toThrow(Bug);
  });
});
