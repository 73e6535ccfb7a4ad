import type { Basis, GuideAt } from '../../model/guide.ts';

/**
 * Models that a full run, or one amount, serves: as many as one of the tool holds, every K, all of the batch.
 *
 * @param made  Models made, which the batch serves at once.
 */
export function modelsServed(at: GuideAt, basis: Basis, made: number): number {
  switch (basis.per) {
    case 'model':
    case 'part':
      return 1;
    case 'every':
      return basis.models;
    case 'tool':
      return at.tools.find(({ use }) => use === basis.tool)?.holds ?? 1;
    case 'batch':
      return Math.max(1, made);
  }
}

/**
 * Models numbered from 1, cut into runs of consecutive numbers; the last run may be smaller.
 *
 *     runsOf(4, 10) -> [1 2 3 4] [5 6 7 8] [9 10]
 */
export function runsOf(served: number, made: number): readonly (readonly number[])[] {
  return Array.from({ length: Math.ceil(made / served) }, (_, run) =>
    Array.from({ length: Math.min(served, made - run * served) }, (_, i) => run * served + i + 1),
  );
}

/** The run, from 0, that serves a model. */
export function runOf(model: number, served: number): number {
  return Math.floor((model - 1) / served);
}

/**
 * Pairs of runs of two steps that share a model.
 *
 *     4 a run:  [1 2 3 4] [5 6 7 8]
 *     3 a run:  [1 2 3] [4 5 6] [7 8]     ->  0-0  0-1  1-1  1-2
 */
export function sharedRuns(
  servedBy: number,
  servedThen: number,
  made: number,
): readonly (readonly [number, number])[] {
  return Array.from({ length: Math.ceil(made / servedBy) }, (_, run) => {
    const first = runOf(run * servedBy + 1, servedThen);
    const last = runOf(Math.min((run + 1) * servedBy, made), servedThen);
    return Array.from({ length: last - first + 1 }, (_, i) => [run, first + i] as const);
  }).flat();
}
