import type { Moment } from '../problem.ts';

/*
 * Moments by number: the starts of all jobs, then their ends. With 3 jobs:
 *
 *     number    0  1  2    3  4  5
 *     of job    0  1  2    0  1  2
 *               starts     ends
 */

export function momentNumber([job, edge]: Moment, jobs: number): number {
  return edge === 'end' ? jobs + job : job;
}

export function jobAt(moment: number, jobs: number): number {
  return isEnd(moment, jobs) ? moment - jobs : moment;
}

export function isEnd(moment: number, jobs: number): boolean {
  return moment >= jobs;
}
