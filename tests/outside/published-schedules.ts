import { readFileSync } from 'node:fs';
import type { Lag, ScheduleProblem } from '../../src/core/solve/schedule/problem.ts';

/** A published instance with the best makespan known; absent where it has been proven that there is no schedule. */
export interface Published {
  readonly name: string;
  readonly problem: ScheduleProblem;
  readonly bestKnown?: number;
}

/** Of 30, 60 or 120 jobs; the best makespan known is proven where it equals the best bound known. */
export interface Project extends Published {
  readonly set: 'j30' | 'j60' | 'j120';
  readonly bestKnown: number;
  readonly lowerBound: number;
}

interface Psplib {
  readonly cases: readonly {
    readonly name: string;
    readonly set: Project['set'];
    readonly bestKnown: number;
    readonly lowerBound: number;
    readonly capacities: readonly number[];
    readonly durations: readonly number[];
    readonly successors: readonly (readonly number[])[];
    readonly demands: readonly (readonly number[])[];
  }[];
}

/** Source: Kolisch and Sprecher, PSPLIB: a project scheduling problem library, EJOR 96 (1997) 205–216. */
export const psplib: readonly Project[] = read<Psplib>('rcpsp.json').cases.map(
  ({ name, set, bestKnown, lowerBound, capacities, durations, successors, demands }) => ({
    name,
    set,
    bestKnown,
    lowerBound,
    problem: {
      capacities,
      durations,
      demands,
      lags: successors.flatMap((next, job) =>
        next.map((follower) => [job, follower, durations[job]!] as const),
      ),
    },
  }),
);

interface WithGreatestLags {
  readonly cases: readonly {
    readonly name: string;
    readonly optimum: number | null;
    readonly capacities: readonly number[];
    readonly durations: readonly number[];
    readonly lags: readonly Lag[];
    readonly demands: readonly (readonly number[])[];
  }[];
}

/** Source: test sets UBO and SM with least and greatest lags; Schwindt (1998), Kolisch, Schwindt and Sprecher (1999). */
export const withGreatestLags: readonly Published[] = read<WithGreatestLags>('rcpsp-max.json').cases.map(
  ({ name, optimum, ...problem }) => ({ name, problem, ...(optimum === null ? {} : { bestKnown: optimum }) }),
);

function read<T>(file: string): T {
  return JSON.parse(readFileSync(new URL(`data/${file}`, import.meta.url), 'utf8')) as T;
}
