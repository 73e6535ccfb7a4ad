import { drawer } from '../../draw.ts';
import type { ScheduleProblem } from '../problem.ts';
import { crossed } from './crossover.ts';
import { tails } from './heads-and-tails.ts';
import { scheduler } from './justify.ts';
import { join } from './population.ts';
import { projectOf } from './project.ts';
import type { Pass } from './serial-pass.ts';
import { shift } from './shift.ts';

/** Schedules that end later than the best one by more than this are not worth two more passes. */
const promising = 1.1;

/**
 * The shortest schedule found for a plain problem. From the one that puts the longest way to the end first, a
 * population of schedules grows: each child follows one parent for a stretch of time and another elsewhere, some keys
 * near each other are shifted, and the schedule that comes of it is justified. Same problem, same schedule.
 *
 * @param lowerBound  A makespan below which none can be: the search ends where it is reached.
 * @param budget      Passes in all, each of which places every job once; at least one is made.
 * @throws {Bug} When a job asks for more than there is, or jobs wait for each other.
 * @source Serial passes over keys, Hartmann (1998); justification and a crossover by stretches of time, Valls,
 *         Ballestín and Quintanilla, A hybrid genetic algorithm for the RCPSP, EJOR 185 (2008) 495-508 (from memory).
 *         The shifts and the numbers are our own.
 */
export function searchPlain(
  problem: ScheduleProblem,
  lowerBound: number,
  budget: number,
): { readonly starts: readonly number[] } {
  const project = projectOf(problem);
  const { schedule, isSpent } = scheduler(project, budget);
  const draw = drawer();
  const most = Math.ceil(Math.sqrt(budget) / 3);
  let best = schedule(
    tails(project).map((tail) => -tail),
    Infinity,
  );
  const population = [best];
  const parent = (): Pass => population[draw(population.length)]!;
  while (best.end > lowerBound && !isSpent()) {
    const keys = crossed(parent(), parent(), draw);
    shift(keys, best.end, draw);
    const child = schedule(keys, promising * best.end);
    if (child.end < best.end) best = child;
    join(population, child, most);
  }
  return { starts: inProblem(best, project.jobs, problem.from ?? 0) };
}

function inProblem({ starts }: Pass, jobs: readonly number[], from: number): number[] {
  const found = new Array<number>(jobs.length);
  jobs.forEach((job, number) => (found[job] = from + starts[number]!));
  return found;
}
