import type { ScheduleProblem } from '../problem.ts';
import { heads, tails } from './heads-and-tails.ts';
import { setsOneAtATime } from './one-at-a-time.ts';
import { projectOf, type Project } from './project.ts';

/**
 * A makespan that no schedule of a plain problem can be below: by the longest path, by the work that waits for each
 * resource, and by jobs that can only follow one another.
 *
 * @throws {Bug} When a job asks for more than there is, or jobs wait for each other.
 */
export function plainBound(problem: ScheduleProblem): number {
  const project = projectOf(problem);
  const loads = loadsOf(project);
  const paths = loads.map(({ head, work, tail }) => head + work + tail);
  const shared = [...project.capacities].map((capacity, resource) =>
    endOfWork(onResource(loads, project, resource), capacity),
  );
  const single = setsOneAtATime(project).map((set) => endOfWork(set.map((job) => loads[job]!), 1)); // prettier-ignore
  return Math.max(0, ...paths, ...shared, ...single);
}

/** Work that does not begin before `head`, and after which at least `tail` minutes follow. */
interface Load {
  readonly head: number;
  readonly work: number;
  readonly tail: number;
}

/** Every job with its own minutes. */
function loadsOf(project: Project): Load[] {
  const [earliest, rest] = [heads(project), tails(project)];
  return [...project.durations].map((work, job) => ({ head: earliest[job]!, work, tail: rest[job]! - work }));
}

/** The jobs that need a resource, with the minutes that they take of it. */
function onResource(loads: readonly Load[], { needs }: Project, resource: number): Load[] {
  return loads.flatMap((load, job) => {
    const need = needs[job]!.find((one) => one.resource === resource);
    return need ? [{ ...load, work: load.work * need.count }] : [];
  });
}

/**
 * The latest end that some of the loads force, when no more than `capacity` is worked off in a minute.
 *
 *     |-- head --|=== all that lies between, without a gap ===|-- tail --|
 *
 * @source Carlier, The one-machine sequencing problem, EJOR 11 (1982) 42-47, for one machine (from memory).
 */
function endOfWork(loads: readonly Load[], capacity: number): number {
  const byTail = loads.toSorted((a, b) => b.tail - a.tail);
  let end = 0;
  for (const from of new Set(loads.map(({ head }) => head))) {
    let sum = 0;
    for (const { head, work, tail } of byTail) {
      if (head < from) continue;
      sum += work;
      end = Math.max(end, from + Math.ceil(sum / capacity) + tail);
    }
  }
  return end;
}
