/**
 * A general scheduling problem: jobs by index, in whole minutes. It knows nothing of guides.
 *
 * A job runs from its start to its end. Without `splits` its end is start + duration; a split job works only
 * while its calendar is open and keeps its places meanwhile, so its end depends on where it starts.
 */
export interface ScheduleProblem {
  /** Minutes of work; whole, zero or more. */
  readonly durations: readonly number[];
  readonly lags: readonly Lag[];
  /** `demands[job][resource]`, held from start to end. A job of no length uses nothing. */
  readonly demands: readonly (readonly number[])[];
  readonly capacities: readonly number[];
  readonly calendars?: readonly Calendar[];
  /** The calendar of each job; -1 or left out: none, the job may lie anywhere. */
  readonly calendarOf?: readonly number[];
  /** Whether a job may stop at closing time and go on at opening. */
  readonly splits?: readonly boolean[];
  /** Whether only the start must lie in the calendar (a machine that runs on at night); `splits` is then left aside. */
  readonly startsOnly?: readonly boolean[];
  /** The mirror image of `startsOnly`: only the end must, so that the minute before it is open. Not both. */
  readonly endsOnly?: readonly boolean[];
  /** No job starts before this minute; 0 where left out. A mirrored problem lies before 0. */
  readonly from?: number;
  /** Earliest start of each job; `from` where left out. */
  readonly releases?: readonly number[];
  /** Latest end of each job; Infinity where left out. */
  readonly deadlines?: readonly number[];
  /** Resources held from the earliest of some moments to the latest of others. */
  readonly holds?: readonly Hold[];
  /** Pairs of sets of jobs of which no two from different sides may overlap. */
  readonly exclusions?: readonly Exclusion[];
  /**
   * For each job a number: among equally good schedules, jobs of one number are kept together in time. Below zero, or
   * left out: the job does not count.
   */
  readonly kinds?: readonly number[];
  /** The resource whose units are people: changes from kind to kind are counted for each of them. */
  readonly crew?: number;
  /** Whether, of schedules as good as each other, the one with the latest starts is wanted, not with the earliest. */
  readonly latest?: boolean;
  /** Whether time runs backwards, so that of jobs of one kind that are alike the last comes first, not the first. */
  readonly reversed?: boolean;
  /** How many schedules may be tried at most; 20,000 where left out. Work, never seconds. */
  readonly budget?: number;
  /** How many jobs may be placed in all schedules together; no such limit where left out. */
  readonly placements?: number;
}

/**
 * `[i, j, l]`: start of j >= start of i + l. A negative `l` is a greatest lag. The edges, where given, choose the
 * moment of i and of j that is meant: edge of j >= edge of i + l.
 */
export type Lag =
  | readonly [i: number, j: number, l: number]
  | readonly [i: number, j: number, l: number, edgeOfI: Edge, edgeOfJ: Edge];
export type Edge = 'start' | 'end';

/** Open stretches `[from, to)` in order, apart from each other; repeated each `every` minutes where given. */
export interface Calendar {
  readonly open: readonly (readonly [from: number, to: number])[];
  readonly every?: number;
}

/** `count` of a resource, from the earliest moment of `from` to the latest of `to`; nothing where that comes first. */
export interface Hold {
  readonly resource: number;
  readonly count: number;
  readonly from: readonly Moment[];
  readonly to: readonly Moment[];
}
export type Moment = readonly [job: number, edge: Edge];

/**
 * No member of `one` may overlap a member of `other`; a member lasts from `before` minutes (0 where left out) before
 * the start of its job to `after` minutes beyond its end. A job on both sides does not exclude itself.
 */
export interface Exclusion {
  readonly one: readonly Member[];
  readonly other: readonly Member[];
}
export interface Member {
  readonly job: number;
  readonly after: number;
  readonly before?: number;
}

export type ScheduleResult =
  | {
      readonly starts: readonly number[];
      readonly ends: readonly number[];
      /** Latest end, counted from `from`. */
      readonly makespan: number;
      /** No schedule can be shorter. */
      readonly lowerBound: number;
      readonly optimal: boolean;
    }
  /** Proven: no schedule exists. */
  | { readonly impossible: Obstacle }
  /** None was found; one may exist. */
  | { readonly notFound: Obstacle; readonly lowerBound: number };

/** Why: which limit, and the jobs and resource that it binds. */
export interface Obstacle {
  readonly because: 'capacity' | 'calendar' | 'lags' | 'deadline' | 'exclusion';
  readonly jobs: readonly number[];
  readonly resource?: number;
}
