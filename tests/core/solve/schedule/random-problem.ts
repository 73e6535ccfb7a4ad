import fc from 'fast-check';
import type {
  Calendar,
  Edge,
  Exclusion,
  Hold,
  Lag,
  ScheduleProblem,
} from '../../../../src/core/solve/schedule/problem.ts';

const edge = fc.constantFrom<Edge>('start', 'end');

/** Problems of a few jobs in which every feature of the type turns up, alone and together; many have no schedule. */
export function randomProblem(most: {
  readonly jobs: number;
  readonly minutes: number;
}): fc.Arbitrary<ScheduleProblem> {
  return fc
    .integer({ min: 1, max: most.jobs })
    .chain((jobs) => {
      const job = fc.nat(jobs - 1);
      const perJob = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T[]> =>
        fc.array(value, { minLength: jobs, maxLength: jobs });
      return fc.record({
        durations: perJob(fc.nat(most.minutes)),
        lags: fc.array(lag(job, most.minutes), { maxLength: jobs > 1 ? jobs + 1 : 0 }),
        demands: perJob(fc.tuple(fc.nat(2), fc.nat(1))),
        capacities: fc.tuple(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 2 })),
        calendars: fc.array(calendar(most.minutes), { minLength: 2, maxLength: 2 }),
        calendarOf: perJob(fc.integer({ min: -1, max: 1 })),
        splits: perJob(fc.boolean()),
        startsOnly: perJob(fc.boolean()),
        endsOnly: perJob(fc.boolean()),
        from: fc.constantFrom(0, 0, 0, -7, 3),
        releases: perJob(fc.constantFrom(0, 0, 0, 2, 5)),
        deadlines: perJob(fc.constantFrom(Infinity, Infinity, Infinity, 12, 20)),
        holds: fc.array(hold(job), { maxLength: 2 }),
        exclusions: fc.array(exclusion(job), { maxLength: 1 }),
        kinds: perJob(fc.nat(2)),
        crew: fc.nat(1),
        latest: fc.boolean(),
        budget: fc.constant(60),
      });
    })
    .map((problem) => ({
      ...problem,
      endsOnly: problem.endsOnly.map((only, job) => only && !problem.startsOnly[job]),
    }))
    .chain((problem) =>
      fc.subarray([...features]).map((left) => ({ ...problem, ...without(left, problem) })),
    );
}

const features = ['lags', 'calendarOf', 'releases', 'deadlines', 'holds', 'exclusions', 'kinds'] as const;

/** The problem without some of its features, so that easy problems turn up too. */
function without(
  left: readonly (typeof features)[number][],
  problem: ScheduleProblem,
): Partial<ScheduleProblem> {
  const nothing: Partial<ScheduleProblem> = { lags: [], calendarOf: problem.durations.map(() => -1) };
  return Object.fromEntries(left.map((name) => [name, nothing[name] ?? []]));
}

function lag(job: fc.Arbitrary<number>, minutes: number): fc.Arbitrary<Lag> {
  const length = fc.integer({ min: -2 * minutes, max: minutes });
  return fc.oneof(
    fc.tuple(job, job, length).filter(([i, j]) => i !== j),
    fc.tuple(job, job, length, edge, edge).filter(([i, j]) => i !== j),
  );
}

function calendar(minutes: number): fc.Arbitrary<Calendar> {
  const gaps = fc.array(fc.tuple(fc.nat(3), fc.integer({ min: 1, max: minutes + 1 })), {
    minLength: 1,
    maxLength: 3,
  });
  return fc.record({ gaps, spare: fc.nat(3), repeats: fc.boolean() }).map(({ gaps, spare, repeats }) => {
    let at = 0;
    const open = gaps.map(([gap, length], index): [number, number] => {
      const from = at + gap + (index > 0 ? 1 : 0);
      at = from + length;
      return [from, at];
    });
    return repeats ? { open, every: at + spare } : { open };
  });
}

function hold(job: fc.Arbitrary<number>): fc.Arbitrary<Hold> {
  const moments = fc.array(fc.tuple(job, edge), { minLength: 1, maxLength: 2 });
  return fc.record({
    resource: fc.nat(1),
    count: fc.integer({ min: 1, max: 2 }),
    from: moments,
    to: moments,
  });
}

function exclusion(job: fc.Arbitrary<number>): fc.Arbitrary<Exclusion> {
  const members = fc.array(fc.record({ job, after: fc.nat(2), before: fc.nat(2) }), {
    minLength: 1,
    maxLength: 2,
  });
  return fc.record({ one: members, other: members });
}
