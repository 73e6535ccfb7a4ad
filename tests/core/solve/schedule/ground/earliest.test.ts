import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brokenRules } from '../../../../../src/core/solve/schedule/feasible.ts';
import { basisOf } from '../../../../../src/core/solve/schedule/ground/ground.ts';
import { jobTimes } from '../../../../../src/core/solve/schedule/ground/job-times.ts';
import type { ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';
import { endOf } from '../every-schedule.ts';
import { randomProblem } from '../random-problem.ts';
import { runs } from '../runs.ts';

/** A problem in which nobody has to share anything; deadlines, where there are any, are tight. */
const alone = (most: { readonly jobs: number; readonly minutes: number }): fc.Arbitrary<ScheduleProblem> =>
  randomProblem(most).map((problem) => ({
    ...problem,
    demands: problem.durations.map(() => []),
    capacities: [],
    holds: [],
    exclusions: [],
    deadlines: problem.durations.map((_, job) => (problem.deadlines?.[job] ?? Infinity) - 8),
  }));

/** Whatever cannot be where it is comes a minute later, until all can be; nothing where that takes it past `horizon`. */
function minuteByMinute(problem: ScheduleProblem, horizon: number): number[] | undefined {
  const { from = 0, releases = [], durations } = problem;
  const starts = durations.map((_, job) => Math.max(from, releases[job] ?? from));
  const endless = { ...problem, deadlines: [] };
  while (Math.max(...starts) <= horizon) {
    const ends = starts.map((start, job) => endOf(problem, job, start));
    const broken = brokenRules(endless, { starts, ends });
    if (broken.length === 0) return starts;
    for (const job of new Set(broken.map(({ jobs }) => jobs.at(-1)!))) starts[job]!++;
  }
  return undefined;
}

describe('the earliest start of every job, when nobody has to share anything', () => {
  it('is the one that is found minute by minute', () => {
    const seen = { starts: 0, late: 0, never: 0 };
    const horizon = 70;
    fc.assert(
      fc.property(alone({ jobs: 4, minutes: 4 }), (problem) => {
        const basis = basisOf(problem);
        const starts = minuteByMinute(problem, horizon);
        const isLate = starts?.some((start, job) => endOf(problem, job, start) > problem.deadlines![job]!);
        seen[!starts ? 'never' : isLate ? 'late' : 'starts']++;
        if (isLate) expect(basis).toMatchObject({ impossible: { because: 'deadline' } });
        else if (starts) expect(basis).toMatchObject({ earliest: starts });
        else if ('earliest' in basis) expect(Math.max(...basis.earliest)).toBeGreaterThan(horizon);
      }),
      { numRuns: runs(600) },
    );
    expect(Math.min(seen.starts, seen.late, seen.never)).toBeGreaterThan(runs(20));
  });

  it('does not come at all where a job finds no time, alone or tied to others', () => {
    const long = { durations: [1, 9], lags: [], demands: [[], []], capacities: [], calendarOf: [0, 0], calendars: [{ open: [[0, 8] as const], every: 24 }] }; // prettier-ignore
    const never = { impossible: { because: 'calendar', jobs: [1] } };
    expect(basisOf(long)).toEqual(never);
    expect(basisOf({ ...long, lags: [[0, 1, 0], [1, 0, -99]] })).toEqual(never); // prettier-ignore
    expect(basisOf({ ...long, splits: [false, true], calendars: [{ open: [[0, 8]] }] })).toEqual(never);
  });

  it('does not come at all where two jobs of a block are never open together', () => {
    // mornings and evenings, and no more than 2 min from one to the other
    const problem: ScheduleProblem = {
      durations: [1, 1],
      lags: [
        [0, 1, -2],
        [1, 0, -2],
      ],
      demands: [[], []],
      capacities: [],
      calendars: [
        { open: [[0, 4]], every: 24 },
        { open: [[12, 16]], every: 24 },
      ],
      calendarOf: [0, 1],
    };
    expect(basisOf(problem)).toEqual({ impossible: { because: 'calendar', jobs: [0, 1] } });
  });

  it('is found where two calendars meet only once in a long while', () => {
    // every 7 and every 9 minutes: together at 0, 63, 126; not before 1
    const problem: ScheduleProblem = {
      durations: [1, 1],
      lags: [
        [0, 1, 0],
        [1, 0, 0],
      ],
      demands: [[], []],
      capacities: [],
      calendars: [
        { open: [[0, 1]], every: 7 },
        { open: [[0, 1]], every: 9 },
      ],
      calendarOf: [0, 1],
      releases: [1, 1],
    };
    expect(basisOf(problem)).toMatchObject({ earliest: [63, 63] });
  });
});

describe('when a job may start, and when it then ends', () => {
  const oneJob = alone({ jobs: 1, minutes: 6 });
  /** All starts that its calendar allows, and their ends. */
  const allowed = (problem: ScheduleProblem): (readonly [start: number, end: number])[] =>
    Array.from({ length: 90 }, (_, start) => [start, endOf(problem, 0, start)] as const).filter(
      ([start, end]) => {
        const { calendars, calendarOf, splits, startsOnly, endsOnly, durations, demands } = problem;
        const free = { calendars: calendars!, calendarOf: calendarOf!, splits: splits! };
        const only = { startsOnly: startsOnly!, endsOnly: endsOnly!, durations, demands };
        const judged = { starts: [start], ends: [end] };
        return brokenRules({ ...free, ...only, lags: [], capacities: [], from: -99 }, judged).length === 0;
      },
    );
  const whatever = (rule: (problem: ScheduleProblem) => void): void =>
    fc.assert(fc.property(oneJob, rule), { numRuns: runs(200) });

  it('agrees with trying minute after minute', () => {
    whatever((problem) => {
      const [times] = jobTimes(problem);
      const all = allowed(problem);
      for (const from of [0, 1, 2, 3, 5, 8, 13, 21]) {
        const first = all.find(([start]) => start >= from);
        const start = times!.start(from);
        const end = start === Infinity ? Infinity : times!.end(start);
        expect([start, end]).toEqual(first ?? [expect.any(Number), Infinity]);
      }
      for (const [start, end] of all) expect(times!.longest).toBeGreaterThanOrEqual(end - start);
    });
  });

  it('knows from when on it ends late enough', () => {
    whatever((problem) => {
      const [times] = jobTimes(problem);
      const all = allowed(problem);
      for (const least of [40, 41, 42, 45, 50]) {
        const first = all.find(([, end]) => end >= least);
        if (first) expect(times!.start(times!.startFor(least))).toBe(first[0]);
      }
    });
  });

  it('repeats with its calendar, and every minute where it has none', () => {
    whatever((problem) => {
      const [times] = jobTimes(problem);
      const { every } = times!;
      if (problem.calendarOf?.[0] === -1) expect(every).toBe(1);
      if (every === Infinity) return;
      for (const from of [0, 3, 11]) expect(times!.start(from + every)).toBe(times!.start(from) + every);
    });
  });

  it('does not start at all where nothing is ever open, or no stretch is long enough', () => {
    const first = (more: Partial<ScheduleProblem>): number | undefined =>
      jobTimes({
        durations: [5],
        lags: [],
        demands: [[]],
        capacities: [],
        calendarOf: [0],
        ...more,
      })[0]?.start(1);
    const [closed, short] = [[{ open: [] }, { open: [], every: 24 }], [{ open: [[0, 4] as const], every: 24 }]]; // prettier-ignore
    expect(first({ calendars: short })).toBe(Infinity);
    expect(first({ calendars: short, durations: [4] })).toBe(24);
    expect(first({ calendars: short, splits: [true] })).toBe(1);
    expect(first({ calendars: short, startsOnly: [true] })).toBe(1);
    for (const calendar of [0, 1])
      for (const flag of [
        {},
        { splits: [true] },
        { startsOnly: [true] },
        { endsOnly: [true] },
        { durations: [0] },
      ])
        expect(first({ calendars: closed, calendarOf: [calendar], ...flag })).toBe(Infinity);
  });
});
