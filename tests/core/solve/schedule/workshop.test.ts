import { describe, expect, it } from 'vitest';
import { assignCrew } from '../../../../src/core/solve/schedule/crew.ts';
import { feasible } from '../../../../src/core/solve/schedule/feasible.ts';
import type { Hold, Lag, ScheduleProblem } from '../../../../src/core/solve/schedule/problem.ts';
import { schedule } from '../../../../src/core/solve/schedule/schedule.ts';

const [builder, stove, shelf, mould, pot] = [0, 1, 2, 3, 4];
const steps = ['weigh', 'melt', 'clear', 'pour', 'chill', 'unmould', 'cover'] as const;
type Step = (typeof steps)[number];

interface Workshop extends ScheduleProblem {
  readonly steps: readonly Step[];
}

/**
 * Gel models as a skills room makes them (invented): weigh and melt in pots of four, clear 20 min on the stove, pour
 * within 45 min of melting, chill 16 h, unmould, cover. Open 09:00–12:30 and 13:00–17:00, Monday to Friday.
 */
function workshop(models: number, moulds: number, builders: number): Workshop {
  const jobs: { step: Step; minutes: number; needs: readonly number[]; hours: number }[] = [];
  const lags: Lag[] = [];
  const holds: Hold[] = [];
  const add = (step: Step, minutes: number, needs: readonly number[], hours = 0) =>
    jobs.push({ step, minutes, needs, hours }) - 1;
  const after = (first: number, next: number) => lags.push([first, next, 0, 'end', 'start']);
  const atOnce = (first: number, next: number) =>
    lags.push([first, next, 0, 'end', 'start'], [next, first, 0, 'start', 'end']);

  for (let first = 0; first < models; first += 4) {
    const weigh = add('weigh', 8, [builder]);
    const melt = add('melt', 8, [builder, stove]);
    const clear = add('clear', 20, [stove]);
    after(weigh, melt);
    atOnce(melt, clear);
    const pours: number[] = [];
    for (let model = first; model < Math.min(models, first + 4); model++) {
      const pour = add('pour', 3, [builder]);
      const chill = add('chill', 960, [shelf], -1);
      const unmould = add('unmould', 5, [builder]);
      const cover = add('cover', 10, [builder]);
      after(clear, pour);
      lags.push([pour, melt, -45, 'end', 'end']);
      atOnce(pour, chill);
      after(chill, unmould);
      after(unmould, cover);
      holds.push({ resource: mould, count: 1, from: [[pour, 'start']], to: [[unmould, 'end']] });
      pours.push(pour);
    }
    holds.push({ resource: pot, count: 1, from: [[melt, 'start']], to: pours.map((pour) => [pour, 'end']) });
  }
  const open = [0, 1, 2, 3, 4].flatMap((day) => [
    [1440 * day + 540, 1440 * day + 750] as const,
    [1440 * day + 780, 1440 * day + 1020] as const,
  ]);
  return {
    steps: jobs.map(({ step }) => step),
    durations: jobs.map(({ minutes }) => minutes),
    demands: jobs.map(({ needs }) =>
      [builder, stove, shelf, mould, pot].map((resource) => (needs.includes(resource) ? 1 : 0)),
    ),
    capacities: [builders, 1, 12, moulds, 1],
    calendars: [{ open, every: 10080 }],
    calendarOf: jobs.map(({ hours }) => hours),
    kinds: jobs.map(({ step }) => (step === 'clear' || step === 'chill' ? -1 : steps.indexOf(step))),
    lags,
    holds,
    crew: builder,
    latest: true,
    placements: 40_000,
  };
}

function made(problem: Workshop) {
  const result = schedule(problem);
  if (!('starts' in result)) throw new Error(JSON.stringify(result));
  const daysOf = (step: Step) =>
    problem.steps.flatMap((at, job) => (at === step ? [Math.floor(result.starts[job]! / 1440)] : []));
  return { ...result, daysOf };
}

/** How often a builder goes on with another step. */
function changesOfTask(
  { durations, kinds = [], capacities }: Workshop,
  { starts, ends }: { readonly starts: readonly number[]; readonly ends: readonly number[] },
): number {
  const order = [...durations.keys()].filter((job) => kinds[job]! >= 0);
  order.sort((a, b) => starts[a]! - starts[b]! || a - b);
  const works = order.map((job) => ({ start: starts[job]!, end: ends[job]!, people: 1, task: kinds[job]! }));
  const last = new Map<number, number>();
  let changes = 0;
  assignCrew(works, capacities[builder]!).forEach(([person], at) => {
    const { task } = works[at]!;
    if (last.has(person!) && last.get(person!) !== task) changes++;
    last.set(person!, task);
  });
  return changes;
}
const distinct = (days: readonly number[]) => [...new Set(days)].sort((a, b) => a - b);

describe('a workshop with an overnight chill', () => {
  it('makes four models in four moulds by the next morning, and knows that nothing is quicker', () => {
    const { makespan, optimal, daysOf } = made(workshop(4, 4, 4));
    expect([distinct(daysOf('pour')), distinct(daysOf('unmould'))]).toEqual([[0], [1]]);
    expect({ makespan, optimal }).toEqual({ makespan: 1440 + 540 + 15, optimal: true });
  });

  it('fills four moulds once each working day for 24 models: six days of pouring, over the weekend too', () => {
    const problem = workshop(24, 4, 2);
    const { daysOf, makespan, lowerBound, ...rest } = made(problem);
    expect(feasible(problem, rest)).toBe(true);
    expect(distinct(daysOf('pour'))).toEqual([0, 1, 2, 3, 4, 7]);
    for (const day of distinct(daysOf('pour')))
      expect(daysOf('pour').filter((at) => at === day)).toHaveLength(4);
    expect(Math.floor(makespan / 1440)).toBe(8);
    expect(makespan - lowerBound).toBeLessThan(60);
  });

  it('keeps 12 moulds and 12 shelves going for 48 models', () => {
    const problem = workshop(48, 12, 2);
    const { daysOf, ...result } = made(problem);
    expect(feasible(problem, result)).toBe(true);
    expect(distinct(daysOf('pour'))).toEqual([0, 1, 2, 3]);
  });

  it('waits for a whole pot where there are fewer moulds than the pot fills, and says what stands in the way', () => {
    // four models are poured from one pot within 45 min, but the two moulds are free again only the next day
    expect(schedule(workshop(4, 2, 2))).toMatchObject({ notFound: { because: 'capacity', resource: mould } });
  });

  // what was found on 2026-11-25, with its bound of 3435: the last blocks are unmoulded on the third morning
  it.each([
    { models: 8, moulds: 4, builders: 1, minutes: 3480, changes: 8 },
    { models: 12, moulds: 8, builders: 2, minutes: 3450, changes: 15 },
    { models: 24, moulds: 12, builders: 2, minutes: 3510, changes: 22 },
  ])('is no later than $minutes min with $models models, and no less calm', ({ minutes, changes, ...of }) => {
    const problem = workshop(of.models, of.moulds, of.builders);
    const { makespan, ...result } = made(problem);
    expect(makespan).toBeLessThanOrEqual(minutes);
    expect(changesOfTask(problem, result)).toBeLessThanOrEqual(changes);
  });

  it('plans 2,000 jobs while one waits', () => {
    const problem = workshop(420, 60, 4);
    expect(problem.durations.length).toBeGreaterThan(1950);
    const begun = performance.now();
    const result = made(problem);
    expect(performance.now() - begun).toBeLessThan(15_000);
    expect(result.makespan).toBeGreaterThanOrEqual(result.lowerBound);
  });
});
