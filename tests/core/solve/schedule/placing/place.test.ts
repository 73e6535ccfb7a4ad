import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brokenRules } from '../../../../../src/core/solve/schedule/feasible.ts';
import { timesOn } from '../../../../../src/core/solve/schedule/ground/board.ts';
import { basisOf } from '../../../../../src/core/solve/schedule/ground/ground.ts';
import { place, placer, type Most } from '../../../../../src/core/solve/schedule/placing/placing.ts';
import type { Lag, Obstacle, ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';
import { endOf } from '../every-schedule.ts';
import { randomProblem } from '../random-problem.ts';
import { runs } from '../runs.ts';

const anything: Most = { work: 10_000, end: Infinity, late: Infinity };

/** The schedule that comes of a line of jobs, first in line first; or why there is none. */
function placed(problem: ScheduleProblem, line: readonly number[], most: Partial<Most> = {}, inLine = false) {
  const basis = basisOf(problem);
  if ('impossible' in basis) throw new Error(JSON.stringify(basis));
  const placing = placer(basis);
  const rank = Int32Array.from(line, (_, job) => line.indexOf(job));
  const obstacle = place(placing, rank, { ...anything, ...most }, inLine);
  return { obstacle, ...timesOn(placing.making.board), work: placing.making.work };
}
const startsOf = (...given: Parameters<typeof placed>): readonly number[] | Obstacle => {
  const { obstacle, starts } = placed(...given);
  return obstacle ?? starts;
};
/** Jobs that each need the only bench. */
function atOneBench(durations: readonly number[], more: Partial<ScheduleProblem> = {}): ScheduleProblem {
  return { durations, lags: [], demands: durations.map(() => [1]), capacities: [1], ...more };
}
const after = (i: number, j: number, minutes = 0): Lag => [i, j, minutes, 'end', 'start'];
const within = (i: number, j: number, minutes: number): Lag => [j, i, -minutes, 'start', 'end'];

describe('a line of jobs', () => {
  const problem = atOneBench([5, 3, 2]);
  it('is the order in which they get the bench', () => {
    expect(startsOf(problem, [0, 1, 2])).toEqual([0, 5, 8]);
    expect(startsOf(problem, [2, 0, 1])).toEqual([2, 7, 0]);
  });
  it('lets a job into a gap before another, unless no work may begin before what comes earlier', () => {
    const late = { ...problem, releases: [0, 4, 0] };
    const gap = { ...late, durations: [1, 3, 2] };
    expect(startsOf(gap, [0, 1, 2])).toEqual([0, 4, 1]);
    expect(startsOf(gap, [0, 1, 2], {}, true)).toEqual([0, 4, 7]);
  });
  it('passes all gaps that are too short', () => {
    // 30 jobs of 1 min, every other minute; the last job takes 2
    const short = [...Array(30).keys()];
    const gaps = atOneBench([...short.map(() => 1), 2], { releases: [...short.map((job) => 2 * job), 0] });
    expect(startsOf(gaps, [...short, 30])).toEqual([...short.map((job) => 2 * job), 59]);
  });
  it('waits for what it must wait for', () => {
    expect(startsOf({ ...problem, lags: [after(0, 1)] }, [1, 2, 0])).toEqual([2, 7, 0]);
  });
  it('of a machine holds up nobody of the crew', () => {
    // job 1 runs by itself from 20 on; job 2 comes later in line, and begins before it all the same
    const machine = { ...problem, demands: [[1], [0], [1]], crew: 0, releases: [0, 20, 0] };
    expect(startsOf(machine, [0, 1, 2], {}, true)).toEqual([0, 20, 5]);
    // nor does the crew hold up a machine that comes last in line
    expect(startsOf({ ...machine, releases: [0, 0, 0] }, [0, 2, 1], {}, true)).toEqual([0, 0, 5]);
  });
});

describe('jobs that may not be far from each other', () => {
  it('are placed as one, in the order in which they follow each other', () => {
    // melt 5, then pour 3 within 2 min: the bench has room for the melt at 0, but not for both before 20
    const problem = atOneBench([5, 3, 14], { lags: [after(0, 1), within(0, 1, 2)], releases: [0, 0, 6] });
    expect(startsOf(problem, [2, 1, 0])).toEqual([20, 25, 6]);
    expect(startsOf(problem, [0, 1, 2])).toEqual([0, 5, 8]);
  });
  it('are moved later together when the second finds no room', () => {
    const problem = atOneBench([5, 3, 10], {
      demands: [[0], [1], [1]],
      lags: [after(0, 1), within(0, 1, 2)],
    });
    // the bench is free again at 10; so melting begins no earlier than 3
    expect(startsOf(problem, [2, 0, 1])).toEqual([3, 10, 0]);
    // one place is looked for for the long one, and two twice: the long one stays where it is
    expect(placed(problem, [2, 0, 1]).work).toBe(5);
  });
  it('cannot be placed where each keeps the other from its place', () => {
    const problem = atOneBench([5, 5], { lags: [within(0, 1, -3), within(1, 0, -3)] });
    const { obstacle } = placed({ ...problem, lags: [[0, 1, -3], [1, 0, -3]] }, [0, 1], { work: 200 }); // prettier-ignore
    expect(obstacle).toEqual({ because: 'lags', jobs: [0, 1] });
  });
});

describe('a tin that is held', () => {
  // pour 5, unmould 3 after 20 min: for two models
  const models = atOneBench([5, 3, 5, 3], {
    demands: [[0], [0], [0], [0]],
    lags: [after(0, 1, 20), after(2, 3, 20)],
    holds: [0, 2].map((pour) => ({
      resource: 0,
      count: 1,
      from: [[pour, 'start']],
      to: [[pour + 1, 'end']],
    })),
  });
  it('is not given to the next before it is given back, whoever is first in line', () => {
    expect(startsOf(models, [0, 2, 1, 3])).toEqual([0, 25, 28, 53]);
    expect(startsOf(models, [2, 0, 3, 1])).toEqual([28, 53, 0, 25]);
  });
  it('is shared where there are two', () => {
    expect(startsOf({ ...models, capacities: [2] }, [0, 2, 1, 3])).toEqual([0, 25, 0, 25]);
  });
  it('is missed by all for ever when two each hold what the other waits for', () => {
    // each takes a tin and a stand, the first in this order, the second in the other, and gives neither back
    const problem: ScheduleProblem = {
      ...atOneBench([1, 1, 1, 1]),
      demands: [[0, 0], [0, 0], [0, 0], [0, 0]], // prettier-ignore
      capacities: [1, 1],
      lags: [after(0, 1, 5), after(2, 3, 5)],
      holds: [
        { resource: 0, count: 1, from: [[0, 'start']], to: [[1, 'end']] },
        { resource: 1, count: 1, from: [[2, 'start']], to: [[3, 'end']] },
        { resource: 1, count: 1, from: [[1, 'start']], to: [[1, 'end']] },
        { resource: 0, count: 1, from: [[3, 'start']], to: [[3, 'end']] },
      ],
    };
    expect(startsOf(problem, [0, 2, 1, 3])).toEqual({ because: 'capacity', jobs: [3], resource: 0 });
    expect(startsOf(problem, [0, 1, 2, 3])).toEqual([0, 6, 7, 13]);
  });
});

describe('a job that waits for a tin', () => {
  const none = [0, 0];
  const bench = [1, 0];
  const tin = (from: number, to: number, count = 1) =>
    ({ resource: 1, count, from: [[from, 'start']], to: [[to, 'end']] }) as const;

  it('comes in its turn as soon as one is given back', () => {
    // pour 0 and 2 at the bench, unmould 1 and 3; job 4 has the bench for 10 min, not before 28, when the tin is back
    const problem = atOneBench([5, 3, 5, 3, 10], {
      demands: [bench, none, bench, none, bench],
      capacities: [1, 1],
      lags: [after(0, 1, 20), after(2, 3, 20)],
      holds: [tin(0, 1), tin(2, 3)],
      releases: [0, 0, 0, 0, 28],
    });
    expect(startsOf(problem, [0, 2, 1, 4, 3])).toEqual([0, 25, 28, 53, 33]);
    expect(startsOf(problem, [0, 4, 2, 1, 3])).toEqual([0, 25, 38, 63, 28]);
  });

  it('is followed by the next who waits, where two are given back', () => {
    const problem = atOneBench([5, 3, 5, 5, 10], {
      demands: [bench, none, bench, bench, bench],
      capacities: [1, 2],
      lags: [after(0, 1, 20)],
      holds: [tin(0, 1, 2), tin(2, 2), tin(3, 3)],
      releases: [0, 0, 0, 0, 28],
    });
    expect(startsOf(problem, [0, 2, 3, 1, 4])).toEqual([0, 25, 28, 33, 38]);
  });

  it('goes at once beyond who has it already, where its own need cannot end before', () => {
    // job 2 has the tin from 10 to 15; job 0 takes it for 5 min and until job 1 has ended
    const problem = atOneBench([5, 5, 5], {
      demands: [none, none, [0, 1]],
      capacities: [1, 1],
      holds: [tin(0, 1)],
      releases: [0, 0, 10],
    });
    expect(placed({ ...problem, lags: [after(0, 1)] }, [2, 0, 1])).toMatchObject({
      starts: [0, 5, 10],
      work: 3,
    });
    expect(placed({ ...problem, lags: [after(0, 1, 1)] }, [2, 0, 1])).toMatchObject({
      starts: [15, 21, 10],
      work: 3,
    });
  });
});

describe('a job that turns out to be too early', () => {
  // the bench is taken from 0 to 20 by job 2; job 1 needs it, and job 0 may begin no more than 5 min before job 1
  const late = atOneBench([5, 5, 20, 5], {
    demands: [[0, 1], [1, 0], [1, 0], [0, 1]], // prettier-ignore
    capacities: [1, 1],
    lags: [[1, 0, -5]],
  });
  it('is moved later, and all since is placed again', () => {
    expect(startsOf(late, [2, 0, 1, 3])).toEqual([15, 20, 0, 0]);
    expect(startsOf(late, [2, 0, 3, 1])).toEqual([15, 20, 0, 0]);
    expect(startsOf(late, [2, 3, 0, 1])).toEqual([15, 20, 0, 0]);
    // where no work may begin before what comes earlier, the last begins with the one before it
    expect(startsOf(late, [2, 0, 1, 3], {}, true)).toEqual([15, 20, 0, 20]);
  });
  it('is what stands in the way when there is no more work to spare', () => {
    expect(startsOf(late, [2, 0, 1, 3], { work: 2 })).toEqual({ because: 'lags', jobs: [0, 1] });
    expect(startsOf(late, [2, 0, 1, 3], { work: 3 })).toEqual([15, 20, 0, 0]);
  });
  it('since its tin would be held too long, begins when the tin is free for all that time', () => {
    // job 3 has the bench until 12, job 2 the tin from 10 to 15; job 1 needs the bench, so the tin until 17
    const held = (edge: 'start' | 'end') =>
      atOneBench([5, 5, 5, 7], {
        demands: [[0, 0], [1, 0], [0, 1], [1, 0]], // prettier-ignore
        capacities: [1, 1],
        lags: [after(0, 1)],
        holds: [{ resource: 1, count: 1, from: [[0, edge]], to: [[1, 'end']] }],
        releases: [0, 0, 10, 5],
      });
    expect(startsOf(held('start'), [3, 2, 0, 1])).toEqual([15, 20, 10, 5]);
    // taken only when hands leave it
    expect(startsOf(held('end'), [3, 2, 0, 1])).toEqual([10, 15, 10, 5]);
  });
});

describe('what is not good enough is given up', () => {
  const problem = atOneBench([5, 3, 2], { deadlines: [Infinity, Infinity, 8] });
  it('as soon as it is certain to end too late', () => {
    expect(placed(problem, [0, 1, 2], { end: 10 }).obstacle).toBeUndefined();
    expect(placed(problem, [0, 1, 2], { end: 9 }).obstacle).toEqual({ because: 'deadline', jobs: [2] });
    // 10 min follow job 1: with it at 5 there is no need to look at the third
    const followed = { ...problem, durations: [5, 3, 2, 10], demands: [[1], [1], [1], [0]], lags: [after(1, 3)] }; // prettier-ignore
    expect(placed(followed, [0, 1, 2, 3], { end: 17 })).toMatchObject({
      obstacle: { because: 'deadline', jobs: [1] },
      work: 2,
    });
  });
  it('also when it ends too late because it pauses while closed', () => {
    // 3 min, closed for 7, and 2 min more
    const calendars = [{ open: [[0, 3], [10, 20]] as const }]; // prettier-ignore
    const paused = { ...atOneBench([5]), calendars, calendarOf: [0], splits: [true] };
    expect(placed(paused, [0], { end: 12 }).obstacle).toBeUndefined();
    expect(placed(paused, [0], { end: 11 }).obstacle).toEqual({ because: 'deadline', jobs: [0] });
  });
  it('when a job comes too late by more than may be', () => {
    expect(placed(problem, [0, 1, 2], { late: 2 }).obstacle).toBeUndefined();
    expect(placed(problem, [0, 1, 2], { late: 1 }).obstacle).toEqual({ because: 'deadline', jobs: [2] });
  });
});

describe('why there is no place', () => {
  it('a calendar has come to an end', () => {
    const problem = atOneBench([5, 5], { calendars: [{ open: [[0, 9]] }], calendarOf: [0, 0] });
    const because = (job: number) => ({ because: 'calendar', jobs: [job] });
    // that is certain at once: no more than two places are looked for
    expect(placed(problem, [0, 1])).toMatchObject({ obstacle: because(1), work: 2 });
    expect(placed(problem, [1, 0])).toMatchObject({ obstacle: because(0), work: 2 });
  });
});

describe('many that are alike', () => {
  /** Melt, then pour so soon after: two sizes of each, at a stove and a bench. */
  const pairs = fc
    .array(fc.record({ large: fc.boolean(), release: fc.constantFrom(0, 0, 0, 3, 8, 20) }), {
      minLength: 2,
      maxLength: 6,
    })
    .chain((pots) =>
      fc.tuple(fc.constant(pots), fc.integer({ min: 1, max: 2 }), fc.integer({ min: 0, max: 2 })),
    );

  it('come each at the first minutes at which melting and pouring both find room', () => {
    fc.assert(
      fc.property(pairs, ([pots, stoves, slack]) => {
        const durations = pots.flatMap(({ large }) => (large ? [4, 3] : [2, 3]));
        const problem: ScheduleProblem = {
          durations,
          lags: pots.flatMap((_, pot) => [
            after(2 * pot, 2 * pot + 1, 1),
            within(2 * pot, 2 * pot + 1, 1 + slack),
          ]),
          demands: pots.flatMap(() => [[1, 0], [0, 1]]), // prettier-ignore
          capacities: [stoves, 1],
          releases: pots.flatMap(({ release }) => [release, 0]),
        };
        const [stove, bench] = [new Map<number, number>(), new Map<number, number>()];
        const isFree = (place: Map<number, number>, room: number, from: number, length: number) =>
          Array.from({ length }, (_, i) => place.get(from + i) ?? 0).every((used) => used < room);
        const take = (place: Map<number, number>, from: number, length: number) => {
          for (let minute = from; minute < from + length; minute++)
            place.set(minute, (place.get(minute) ?? 0) + 1);
        };
        const expected = pots.flatMap(({ large, release }) => {
          const melting = large ? 4 : 2;
          for (let start = release; ; start++) {
            const pours = Array.from({ length: slack + 1 }, (_, i) => start + melting + 1 + i);
            const pour = pours.find((minute) => isFree(bench, 1, minute, 3));
            if (pour === undefined || !isFree(stove, stoves, start, melting)) continue;
            take(stove, start, melting);
            take(bench, pour, 3);
            return [start, pour];
          }
        });
        expect(startsOf(problem, [...durations.keys()])).toEqual(expected);
      }),
      { numRuns: 60 },
    );
  });
});

describe('many that are alike and find no room for long', () => {
  // until 40 the stove is free for a minute at 0, 4, 8 …, and the bench at 3, 7, 11 …: nothing can be melted in a
  // minute and poured in the next one
  const taken = [...Array(10).keys()];
  const pots = (many: number): ScheduleProblem => {
    const all = [...Array(many).keys()].map((pot) => 2 * taken.length + 2 * pot);
    return {
      durations: [...taken.flatMap(() => [3, 3]), ...all.flatMap(() => [1, 1])],
      releases: [...taken.flatMap((n) => [4 * n + 1, 4 * n]), ...all.flatMap(() => [0, 0])],
      demands: [...taken, ...all].flatMap(() => [[1, 0], [0, 1]]), // prettier-ignore
      capacities: [1, 1],
      lags: all.flatMap((melt) => [after(melt, melt + 1), within(melt, melt + 1, 0)]),
    };
  };
  const inTurn = (problem: ScheduleProblem) => placed(problem, [...problem.durations.keys()]);

  it('are looked for a place for from where the last of them was put', () => {
    expect(inTurn(pots(3)).starts.slice(20)).toEqual([40, 41, 41, 42, 42, 43]);
    const [one, nine] = [inTurn(pots(1)).work, inTurn(pots(9)).work];
    // the first goes all the way: at least a place for each of both at 0, 4, 8 … 40; the others, two ways at most
    expect(one).toBeGreaterThanOrEqual(20 + 2 * 11);
    expect(nine - one).toBeLessThanOrEqual(8 * 4);
  });

  it('are looked for from the beginning where they differ, or one might have come sooner', () => {
    // the second may wait two minutes between: from 5 on, it is melted at 8 and poured at 11
    const patient = { ...pots(2), releases: [...pots(2).releases!.slice(0, 22), 5, 0] };
    const lags = [after(20, 21), within(20, 21, 0), after(22, 23), within(22, 23, 2)];
    expect(inTurn({ ...patient, lags }).starts.slice(20)).toEqual([40, 41, 8, 11]);
    // the first is not there before 50; the second comes before it
    const late = { ...pots(2), releases: [...pots(2).releases!.slice(0, 20), 50, 0, 0, 0] };
    expect(inTurn(late).starts.slice(20)).toEqual([50, 51, 40, 41]);
  });
});

/** The problem of some jobs alone. */
function part(problem: ScheduleProblem, jobs: readonly number[]): ScheduleProblem {
  const of = <T>(values: readonly T[] | undefined): T[] =>
    values ? jobs.filter((job) => job in values).map((job) => values[job]!) : [];
  const isIn = (job: number): boolean => jobs.includes(job);
  const members = (all: readonly { readonly job: number; readonly after: number }[]) =>
    all.filter(({ job }) => isIn(job)).map((member) => ({ ...member, job: jobs.indexOf(member.job) }));
  return {
    ...problem,
    durations: of(problem.durations),
    demands: of(problem.demands),
    calendarOf: of(problem.calendarOf),
    splits: of(problem.splits),
    startsOnly: of(problem.startsOnly),
    endsOnly: of(problem.endsOnly),
    releases: of(problem.releases),
    deadlines: [],
    holds: [],
    lags: problem.lags
      .filter(([i, j]) => isIn(i) && isIn(j))
      .map(([i, j, least]) => [jobs.indexOf(i), jobs.indexOf(j), least] as const),
    exclusions: (problem.exclusions ?? []).map(({ one, other }) => ({
      one: members(one),
      other: members(other),
    })),
  };
}

/** Each job of a line in its turn, at the first minute at which it breaks no rule beside those before it. */
function oneByOne(problem: ScheduleProblem, line: readonly number[]): number[] | undefined {
  const starts = new Map<number, number>();
  const isReady = (job: number): boolean =>
    !starts.has(job) && problem.lags.every(([i, j]) => j !== job || starts.has(i));
  for (let next = line.find(isReady); next !== undefined; next = line.find(isReady)) {
    const jobs = [...starts.keys(), next];
    const beside = part(problem, jobs);
    const keeps = (start: number): boolean => {
      const all = [...starts.values(), start];
      return brokenRules(beside, { starts: all, ends: jobs.map((job, at) => endOf(problem, job, all[at]!)) }).length === 0; // prettier-ignore
    };
    const start = Array.from({ length: 90 }, (_, minute) => minute - 7).find(keeps);
    if (start === undefined) return undefined;
    starts.set(next, start);
  }
  return problem.durations.map((_, job) => starts.get(job)!);
}

describe('whatever the problem', () => {
  /** Lags run from lower to higher numbers, and none is a greatest one. */
  const inOneDirection = randomProblem({ jobs: 6, minutes: 5 }).map((problem): ScheduleProblem => {
    const lags = problem.lags.filter(([i, j]) => i < j).map(([i, j, least]): Lag => [i, j, Math.abs(least)]);
    return { ...problem, lags, deadlines: [], holds: [] };
  });
  const inAnyOrder = (problems: fc.Arbitrary<ScheduleProblem>) =>
    problems.chain((problem) => {
      const jobs = [...problem.durations.keys()];
      return fc.tuple(fc.constant(problem), fc.shuffledSubarray(jobs, { minLength: jobs.length }));
    });

  it('each job is at the first minute that those before it leave', () => {
    let seen = 0;
    fc.assert(
      fc.property(inAnyOrder(inOneDirection), ([problem, line]) => {
        const expected = oneByOne(problem, line);
        if ('impossible' in basisOf(problem) || !expected) return;
        seen++;
        expect(startsOf(problem, line)).toEqual(expected);
      }),
      { numRuns: runs(300) },
    );
    expect(seen).toBeGreaterThan(runs(60));
  });

  it('a schedule keeps every rule but deadlines, and gives each job one place at least to look for', () => {
    let seen = 0;
    fc.assert(
      fc.property(
        inAnyOrder(randomProblem({ jobs: 6, minutes: 5 })),
        fc.boolean(),
        ([problem, line], inLine) => {
          if ('impossible' in basisOf(problem)) return;
          const { obstacle, work, ...times } = placed(problem, line, {}, inLine);
          if (obstacle) return;
          seen++;
          expect(brokenRules({ ...problem, deadlines: [] }, times)).toEqual([]);
          expect(work).toBeGreaterThanOrEqual(line.length);
        },
      ),
      { numRuns: runs(1000) },
    );
    expect(seen).toBeGreaterThan(runs(60));
  });
});
