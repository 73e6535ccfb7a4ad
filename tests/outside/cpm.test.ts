import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { ScheduleProblem } from '../../src/core/solve/schedule/problem.ts';
import { schedule } from '../../src/core/solve/schedule/schedule.ts';

interface Network {
  readonly id: string;
  readonly source: string;
  readonly duration: number;
  readonly criticalPath: readonly string[];
  readonly activities: readonly {
    readonly id: string;
    readonly dur: number;
    readonly preds: readonly string[];
    readonly ES: number;
    readonly EF: number;
  }[];
}
const { cases } = JSON.parse(readFileSync(new URL('data/cpm.json', import.meta.url), 'utf8')) as {
  cases: readonly Network[];
};

/** A network of activities as jobs that share nothing. */
function problemOf({ activities }: Network): ScheduleProblem {
  const index = new Map(activities.map(({ id }, job) => [id, job]));
  return {
    durations: activities.map(({ dur }) => dur),
    lags: activities.flatMap(({ preds }, job) =>
      preds.map((id) => [index.get(id)!, job, 0, 'end', 'start'] as const),
    ),
    demands: activities.map(() => []),
    capacities: [],
  };
}

/**
 * Sources: Render, Stair and Hanna, Quantitative Analysis for Management; Hillier and Lieberman, Introduction to
 * Operations Research; Taylor, Introduction to Management Science, ch. 8; a teaching example. Each is named in the data.
 */
describe('the critical path of published networks', () => {
  it.each(cases)('$id: earliest starts and finishes, and the duration of the project', (network) => {
    const result = schedule(problemOf(network));
    expect(result).toEqual({
      starts: network.activities.map(({ ES }) => ES),
      ends: network.activities.map(({ EF }) => EF),
      makespan: network.duration,
      lowerBound: network.duration,
      optimal: true,
    });
  });

  it.each(cases)('$id: a minute more on the critical path makes the project a minute longer', (network) => {
    const problem = problemOf(network);
    for (const id of network.criticalPath) {
      const job = network.activities.findIndex((activity) => activity.id === id);
      const longer = { ...problem, durations: problem.durations.with(job, problem.durations[job]! + 1) };
      expect(schedule(longer)).toMatchObject({ makespan: network.duration + 1 });
    }
  });
});
