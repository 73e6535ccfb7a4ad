import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { criticalChain, type Link } from '../../../../src/core/solve/schedule/chain/critical-chain.ts';
import { feasible } from '../../../../src/core/solve/schedule/feasible.ts';
import type { ScheduleProblem } from '../../../../src/core/solve/schedule/problem.ts';
import { schedule } from '../../../../src/core/solve/schedule/schedule.ts';
import { randomProblem } from './random-problem.ts';
import { runs } from './runs.ts';

const work = (durations: readonly number[], more: Partial<ScheduleProblem> = {}): ScheduleProblem => ({
  durations,
  lags: [],
  demands: durations.map(() => [1]),
  capacities: [1],
  ...more,
});

function chain(problem: ScheduleProblem, starts: readonly number[], ends?: readonly number[]): Link[] {
  const whole = starts.map((start, job) => start + problem.durations[job]!);
  return [...criticalChain(problem, { starts, ends: ends ?? whole })];
}
const told = ({ job, because }: Link): string =>
  'before' in because
    ? `${job} ${because.kind} of ${because.before}${because.closed ? ' when open' : ''}`
    : `${job} ${because.kind}`;

describe('the chain that decides when all is over', () => {
  it('goes over waits and full places, past what has time to spare', () => {
    // one builder: melt 0–10, pour 30–35 after 20 of cooling; cut 10–25 has time; press 35–40 waits for the builder
    const problem = work([10, 5, 15, 5], { lags: [[0, 1, 20, 'end', 'start']] });
    expect(chain(problem, [0, 30, 10, 35]).map(told)).toEqual(['0 start', '1 lag of 0', '3 resource of 1']);
  });

  it('begins with what is delivered', () => {
    const problem = work([10, 5], { releases: [0, 60], demands: [[1], [1]] });
    expect(chain(problem, [0, 60]).map(told)).toEqual(['1 release']);
  });

  it('waits for opening with what was over after closing', () => {
    // open 0–60 and 100–160; pour 0–10, then 70 of chill until 80: unmould at opening
    const calendars = [
      {
        open: [
          [0, 60],
          [100, 160],
        ] as const,
      },
    ];
    const problem = work([10, 5], {
      lags: [[0, 1, 70, 'end', 'start']],
      calendars,
      calendarOf: [0, 0],
    });
    expect(chain(problem, [0, 100]).map(told)).toEqual(['0 start', '1 lag of 0 when open']);
  });

  it('waits for the tin that the block before is in', () => {
    // one tin from pour (0, 2) to unmould (1, 3): the second pour when the first is unmoulded
    const problem = work([5, 5, 5, 5], {
      demands: [
        [1, 0],
        [1, 0],
        [1, 0],
        [1, 0],
      ],
      capacities: [2, 1],
      lags: [
        [0, 1, 30, 'end', 'start'],
        [2, 3, 30, 'end', 'start'],
      ],
      holds: [
        { resource: 1, count: 1, from: [[0, 'start']], to: [[1, 'end']] },
        { resource: 1, count: 1, from: [[2, 'start']], to: [[3, 'end']] },
      ],
    });
    expect(chain(problem, [0, 35, 40, 75]).map(told)).toEqual([
      '0 start',
      '1 lag of 0',
      '2 resource of 1',
      '3 lag of 2',
    ]);
  });

  it('begins no earlier than a hold limit lets it', () => {
    // the stove is busy until 50; pour waits for it, and melt may be over no more than 15 before pour is
    const problem = work([50, 10, 5, 20], {
      demands: [
        [0, 1],
        [1, 0],
        [0, 1],
        [1, 0],
      ],
      capacities: [1, 1],
      lags: [
        [1, 2, 0, 'end', 'start'],
        [2, 1, -15, 'end', 'end'],
      ],
    });
    // melt 30–40, pour 50–55, then 20 more for who melted: 40–60
    expect(chain(problem, [0, 30, 50, 40]).map(told)).toEqual([
      '0 start',
      '2 resource of 0',
      '1 lag of 2',
      '3 resource of 1',
    ]);
  });

  it('waits until vapour has cleared', () => {
    const problem = work([10, 10], {
      demands: [[0], [0]],
      exclusions: [{ one: [{ job: 0, after: 30 }], other: [{ job: 1, after: 0 }] }],
    });
    expect(chain(problem, [0, 40]).map(told)).toEqual(['0 start', '1 exclusion of 0']);
  });

  it('reaches back as far as it can where a schedule leaves room', () => {
    const problem = work([10, 10], { lags: [[0, 1, 0, 'end', 'start']] });
    expect(chain(problem, [5, 15]).map(told)).toEqual(['0 start', '1 lag of 0']);
  });

  it('is empty where there is nothing to do', () => {
    expect(chain(work([]), [])).toEqual([]);
  });
});

describe('what a job is said to wait for', () => {
  // jobs in their places, and the last of them judged: what the chain says of it
  const said = (problem: ScheduleProblem, starts: readonly number[]): string => {
    const links = chain(problem, starts);
    const { because } = links.at(-1)!;
    return `${told(links.at(-1)!)}${'resource' in because ? `, ${because.resource}` : ''}`;
  };
  const free = { demands: [[0], [0], [0]] };

  it.each<[what: string, problem: ScheduleProblem, starts: readonly number[], says: string]>([
    ['a lag from start to start', work([9, 5], { ...free, lags: [[0, 1, 7]] }), [0, 7], '1 lag of 0'],
    ['from end to end', work([9, 5], { ...free, lags: [[0, 1, 7, 'end', 'end']] }), [0, 11], '1 lag of 0'],
    ['from start to end', work([9, 5], { ...free, lags: [[0, 1, 20, 'start', 'end']] }), [0, 15], '1 lag of 0'],
    ['the one of two places that is given back last', work([5, 9, 9], { capacities: [2] }), [0, 0, 5], '2 resource of 0, 0'],
    [
      'two places at once, when the second is given back',
      work([5, 8, 9], { capacities: [2], demands: [[1], [1], [2]] }),
      [0, 0, 8],
      '2 resource of 1, 0',
    ],
    [
      'what it has too little of, not what is given back at the same minute',
      work([8, 8, 5], { capacities: [1, 2], demands: [[1, 0], [0, 1], [1, 1]] }),
      [0, 0, 8],
      '2 resource of 0, 0',
    ],
    [
      'flame, until some time before the vapour',
      work([8, 5], { ...free, exclusions: [{ one: [{ job: 0, after: 0 }], other: [{ job: 1, after: 0, before: 4 }] }] }),
      [0, 12],
      '1 exclusion of 0',
    ],
    [
      'vapour, when flame comes after it',
      work([8, 5], { ...free, exclusions: [{ one: [{ job: 1, after: 0 }], other: [{ job: 0, after: 4 }] }] }),
      [0, 12],
      '1 exclusion of 0',
    ],
    [
      'a tin until the latest of two moments',
      work([5, 5, 5], {
        demands: [[0], [0], [1]],
        holds: [{ resource: 0, count: 1, from: [[0, 'start'], [1, 'start']], to: [[0, 'end'], [1, 'end']] }],
      }),
      [0, 20, 25],
      '2 resource of 1, 0',
    ],
    ['its delivery, which comes later than the first minute', work([5], { releases: [7], from: 3 }), [7], '0 release'],
    ['the first minute of all', work([5], { releases: [2], from: 3 }), [3], '0 start'],
  ])('%s', (_, problem, starts, says) => {
    expect(said(problem, starts)).toBe(says);
  }); // prettier-ignore

  it('is the tin that another gives back, where it takes one when it has ended', () => {
    const problem = work([9, 4, 3], {
      demands: [[1], [0], [0]],
      lags: [[1, 2, 0, 'end', 'start']],
      holds: [{ resource: 0, count: 1, from: [[1, 'end']], to: [[2, 'end']] }],
    });
    expect(chain(problem, [0, 5, 9]).map(told)).toEqual(['0 start', '1 resource of 0', '2 lag of 1']);
  });

  it('is not what leaves it room anyway', () => {
    // two places: job 0 is done when job 1 begins, but job 1 might have begun beside it
    expect(chain(work([5, 9], { capacities: [2] }), [0, 5]).map(told)).toEqual(['1 start']);
    expect(chain(work([5, 9]), [0, 5]).map(told)).toEqual(['0 start', '1 resource of 0']);
  });

  it('is all that it takes at once: for itself and for what it begins', () => {
    const tin = { resource: 0, count: 1, from: [[1, 'start']], to: [[1, 'end']] } as const;
    const problem = work([5, 9], { capacities: [2], holds: [tin] });
    expect(chain(problem, [0, 5]).map(told)).toEqual(['0 start', '1 resource of 0']);
  });

  it('is not a tin of another kind, nor one that is never taken or given back', () => {
    const tray = { resource: 1, count: 1, from: [[0, 'start']], to: [[0, 'end']] } as const;
    const none = { ...tray, resource: 0 };
    const problem = work([5, 9], {
      demands: [[0, 0], [1, 0]], // prettier-ignore
      capacities: [1, 1],
      holds: [tray, { ...none, from: [] }, { ...none, to: [] }],
    });
    expect(chain(problem, [0, 5]).map(told)).toEqual(['1 start']);
  });

  it.each([
    [[0, 1], [2, 3]], // prettier-ignore
    [[1, 0], [3, 2]], // prettier-ignore
  ])('is a tin from its first moment to its last, in whatever order they are named: %j', (from, to) => {
    // held from 10 (job 1 begins; job 0 at 12) to 40 (job 2 ends; job 3 at 30): needed by job 5 after, and by 4 before
    const problem = work([5, 5, 5, 5, 10, 10], {
      demands: [[0], [0], [0], [0], [1], [1]],
      holds: [
        {
          resource: 0,
          count: 1,
          from: from.map((job) => [job, 'start'] as const),
          to: to.map((job) => [job, 'end'] as const),
        },
      ],
      lags: [[1, 2, 25]],
    });
    expect(chain(problem, [12, 10, 35, 25, 0, 40]).map(told)).toEqual([
      '4 start',
      '1 resource of 4',
      '2 lag of 1',
      '5 resource of 2',
    ]);
  });

  it('begins furthest back where several end last and none leads to the beginning', () => {
    const beside = { capacities: [2] };
    expect(chain(work([12, 10], beside), [3, 5]).map(told)).toEqual(['0 start']);
    expect(chain(work([10, 12], beside), [5, 3]).map(told)).toEqual(['1 start']);
    expect(chain(work([10, 10], beside), [5, 5]).map(told)).toEqual(['0 start']);
  });

  it('is one of the fewest jobs that lead back to the beginning', () => {
    // the last waits for the bench until 20, and for one long wait from the beginning
    const problem = work([10, 10, 5, 1], {
      demands: [[1], [1], [1], [0]],
      lags: [[3, 2, 20]],
    });
    expect(chain(problem, [0, 10, 20, 0]).map(told)).toEqual(['3 start', '2 lag of 3']);
  });
});

describe('whatever the problem, the chain of a schedule', () => {
  it('is connected, names each job once, and ends with what ends last', { timeout: 60_000 }, () => {
    let longest = 0;
    fc.assert(
      fc.property(randomProblem({ jobs: 6, minutes: 5 }), (problem) => {
        const result = schedule({ ...problem, budget: 20, placements: 400 });
        if (!('starts' in result)) return;
        const { starts, ends } = result;
        const links = criticalChain(problem, result);
        longest = Math.max(longest, links.length);
        const jobs = links.map(({ job }) => job);
        expect(new Set(jobs).size).toBe(jobs.length);
        expect(ends[jobs.at(-1)!]).toBe(Math.max(...ends));
        expect('before' in links[0]!.because).toBe(false);
        links.slice(1).forEach(({ job, because }, i) => {
          expect(because).toMatchObject({ before: jobs[i] });
          expect(isThere(problem, job, because)).toBe(true);
          expect(couldNotComeEarlier(problem, { starts, ends }, job)).toBe(true);
        });
      }),
      { numRuns: runs(300) },
    );
    expect(longest).toBeGreaterThan(3);
  });
});

/** Whether the problem has what a job is said to wait for. */
function isThere(
  { lags, demands, holds = [], exclusions = [] }: ScheduleProblem,
  job: number,
  because: Link['because'],
): boolean {
  if (!('before' in because)) return true;
  const { kind, before, resource } = because;
  if (kind === 'lag') return lags.some(([i, j]) => i === before && j === job);
  const touch = (members: readonly { readonly job: number }[], wanted: number): boolean =>
    members.some((member) => member.job === wanted);
  if (kind === 'exclusion')
    return exclusions.some(
      ({ one, other }) =>
        (touch(one, before) && touch(other, job)) || (touch(other, before) && touch(one, job)),
    );
  const takes = (wanted: number, side: 'from' | 'to'): boolean =>
    demands[wanted]![resource!]! > 0 ||
    holds.some((hold) => hold.resource === resource && hold[side].some(([of]) => of === wanted));
  return takes(before, 'to') && takes(job, 'from');
}

/** A job in a chain is bound by something: no start one minute earlier keeps every rule, all others where they are. */
function couldNotComeEarlier(
  problem: ScheduleProblem,
  { starts, ends }: { readonly starts: readonly number[]; readonly ends: readonly number[] },
  job: number,
): boolean {
  const length = ends[job]! - starts[job]!;
  if (problem.splits?.[job] && length !== problem.durations[job]) return true;
  const earlier = {
    starts: starts.with(job, starts[job]! - 1),
    ends: ends.with(job, ends[job]! - 1),
  };
  return !feasible(problem, earlier);
}
