import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assignCrew } from '../../../../../src/core/solve/schedule/crew.ts';
import { groundOf, type Ground } from '../../../../../src/core/solve/schedule/ground/ground.ts';
import type { ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';
import { isIdeal, isLeft, patience } from '../../../../../src/core/solve/schedule/search/budget.ts';
import {
  compareScores,
  judgeOf,
  latestEnd,
  type Score,
} from '../../../../../src/core/solve/schedule/search/score.ts';

function ground(durations: readonly number[], more: Partial<ScheduleProblem> = {}): Ground {
  const demands = durations.map(() => [1]);
  const found = groundOf({ durations, lags: [], demands, capacities: [1], ...more });
  if ('impossible' in found) throw new Error(JSON.stringify(found));
  return found;
}
function score(of: Ground, starts: readonly number[], worst?: Score): Score {
  const ends = starts.map((start, job) => start + of.prepared.durations[job]!);
  return judgeOf(of).score({ starts, ends }, worst);
}

describe('how good a schedule is', () => {
  // four jobs of 2,500 min by one person: the bound is 10,000
  const long = ground([2500, 2500, 2500, 2500], { kinds: [0, 1, 0, 1], crew: 0 });
  const starts = (gap: number): number[] => [0, 2500, 5000, 7500 + gap];

  it('is told by minutes past deadlines, thousandths of the bound, changes of task, end and starts', () => {
    const late = ground([5, 5, 5], { capacities: [3], deadlines: [9, 9, 9], kinds: [0, 0, 1] });
    // ends at 5, 10 and 12: 1 and 3 min late; the bound is 5, so 7 min more are 1,400 thousandths
    expect(score(late, [0, 5, 7])).toEqual([4, 1400, 1, 12, 12]);
  });
  it('does not grow within the first thousandth', () => {
    expect(score(long, starts(0))[1]).toBe(1);
    expect(score(long, starts(10))[1]).toBe(1);
    expect(score(long, starts(11))[1]).toBe(2);
    expect(latestEnd(long, score(long, starts(10)))).toBe(10_010);
    expect(latestEnd(long, score(long, starts(15)))).toBe(10_020);
  });
  it('is counted from the first minute of the problem', () => {
    const later = ground([10, 10], { from: 1000 });
    // 5 min more than 20
    expect(score(later, [1000, 1015])).toEqual([0, 250, 0, 1025, 2015]);
    const before = ground([10, 10, 10], { from: -1000, kinds: [0, 1, 1], crew: 0 });
    expect(score(before, [-980, -1000, -990])).toEqual([0, 1, 1, -970, -2970]);
  });
  it('prefers later starts where that is wanted', () => {
    expect(score(ground([5, 5], { latest: true }), [0, 5]).at(-1)).toBe(-5);
  });
  it('does not count changes of what is worse already by lateness or end', () => {
    const best = score(long, starts(0));
    expect(score(long, starts(11), best)[2]).toBe(Infinity);
    expect(score(long, starts(10), best)[2]).toBe(3);
    const late = ground([5, 5], { capacities: [2], deadlines: [5, 9], kinds: [0, 1] });
    expect(score(late, [0, 5], [0, 9999, 0, 0, 0])[2]).toBe(Infinity);
    expect(score(late, [0, 5], [1, 9999, 0, 0, 0])[2]).toBe(1);
    expect(score(late, [0, 5], [2, 0, 0, 0, 0])[2]).toBe(1);
  });
});

describe('changes of task', () => {
  const kinds = [0, 1, 0, 1];
  const tens = [10, 10, 10, 10];
  it('are those of each person, who stays at a task as long as there is more of it', () => {
    const two = ground(tens, { kinds, crew: 0, capacities: [2] });
    expect(score(two, [0, 0, 10, 10])[2]).toBe(0);
    const one = ground(tens, { kinds, crew: 0 });
    expect(score(one, [0, 10, 20, 30])[2]).toBe(3);
    expect(score(one, [0, 20, 10, 30])[2]).toBe(1);
  });
  it('are those of everybody together where there is no crew', () => {
    expect(score(ground(tens, { kinds, capacities: [2] }), [0, 0, 10, 10])[2]).toBe(3);
  });
  it('leave aside what has no kind, takes no time, or none of the crew', () => {
    expect(score(ground(tens, { kinds: [0, -1, 0, -1], crew: 0 }), [0, 10, 20, 30])[2]).toBe(0);
    expect(score(ground([10, 0, 10, 10], { kinds: [0, 1, 0, 0], crew: 0 }), [0, 10, 20, 30])[2]).toBe(0);
    const machine = { kinds: [0, 1, 0, 0], crew: 0, demands: [[1], [0], [1], [1]] };
    expect(score(ground(tens, machine), [0, 10, 20, 30])[2]).toBe(0);
  });
  it('are those of all who work together', () => {
    const both = { kinds: [0, 1, 0, 0], crew: 0, capacities: [2], demands: [[2], [2], [1], [1]] };
    expect(score(ground(tens, both), [0, 10, 20, 20])[2]).toBe(2 + 2);
  });
  it('are those of the crew as it is shown, whatever is made when', () => {
    const job = fc.record({ kind: fc.nat(2), minutes: fc.integer({ min: 1, max: 4 }), start: fc.nat(9) });
    const isRight = fc.property(fc.array(job, { minLength: 1, maxLength: 9 }), (jobs) => {
      const durations = jobs.map(({ minutes }) => minutes);
      const starts = jobs.map(({ start }) => start);
      const three = ground(durations, { kinds: jobs.map(({ kind }) => kind), crew: 0, capacities: [3] });
      const inOrder = jobs.toSorted((a, b) => a.start - b.start);
      const works = inOrder.map(({ kind, minutes, start }) => ({
        start,
        end: start + minutes,
        people: 1,
        task: kind,
      }));
      fc.pre(
        works.every(
          ({ start }) => works.filter((work) => work.start <= start && start < work.end).length <= 3,
        ),
      );
      const inHand: number[] = [];
      let changes = 0;
      assignCrew(works, 3).forEach(([person], at) => {
        const { task } = works[at]!;
        if ((inHand[person!] ?? task) !== task) changes++;
        inHand[person!] = task;
      });
      expect(score(three, starts)[2]).toBe(changes);
    });
    fc.assert(isRight, { numRuns: 100 });
  });
  it('tell the blocks of one kind in one hand apart', () => {
    const two = ground(tens, { kinds: [0, 1, 0, 1], crew: 0, capacities: [2] });
    const judge = judgeOf(two);
    judge.score({ starts: [0, 0, 10, 10], ends: [10, 10, 20, 20] });
    expect([...judge.blockOf]).toEqual([0, 1, 0, 1]);
    const one = judgeOf(ground(tens, { kinds: [0, 1, 0, 0], crew: 0 }));
    one.score({ starts: [0, 10, 20, 30], ends: [10, 20, 30, 40] });
    expect([...one.blockOf]).toEqual([0, 1, 2, 2]);
  });
});

describe('the better schedule', () => {
  it('is better in the first number in which two differ', () => {
    expect(compareScores([0, 2, 9, 9, 9], [1, 0, 0, 0, 0])).toBeLessThan(0);
    expect(compareScores([0, 2, 1, 9, 9], [0, 2, 0, 0, 0])).toBeGreaterThan(0);
    expect(compareScores([0, 2, 1, 9, 4], [0, 2, 1, 9, 3])).toBeGreaterThan(0);
    expect(compareScores([0, 2, 1, 9, 4], [0, 2, 1, 9, 3], 4)).toBe(0);
    expect(compareScores([0, 2, 1, 9, 4], [0, 2, 1, 9, 4])).toBe(0);
  });
  it('cannot be had where nothing is late, the end is the bound and nobody changes task needlessly', () => {
    const of = ground([5, 5, 5], { kinds: [0, 1, 1], crew: 0 });
    const ideal = score(of, [0, 5, 10]);
    expect(ideal).toEqual([0, 1, 1, 15, 15]);
    expect(isIdeal(of, ideal)).toBe(true);
    expect(isIdeal(of, [1, 1, 1, 15, 0])).toBe(false);
    expect(isIdeal(of, [0, 1, 2, 15, 0])).toBe(false);
    expect(isIdeal(of, [0, 1, 1, 16, 0])).toBe(false);
    expect(isIdeal(of, [0, 1, 0, 15, 0])).toBe(true);
  });
});

describe('a budget', () => {
  it('is left while both schedules and placements are', () => {
    expect(isLeft({ schedules: 1, placements: 1 })).toBe(true);
    expect(isLeft({ schedules: 0, placements: 1 })).toBe(false);
    expect(isLeft({ schedules: 1, placements: 0 })).toBe(false);
  });
  it('is laid down when a part of it has gone by with nothing better', () => {
    const left = { schedules: 10, placements: 100 };
    const waiting = patience(left, 1 / 4);
    left.placements = 75;
    expect(waiting.isOver()).toBe(false);
    waiting.renew();
    left.placements = 50;
    expect(waiting.isOver()).toBe(false);
    left.placements = 49;
    expect(waiting.isOver()).toBe(true);
  });
});
