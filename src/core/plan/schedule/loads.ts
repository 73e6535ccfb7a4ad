import type { Calendar, Moment } from '../../solve/schedule/problem.ts';
import { stretchesOf } from './back.ts';
import type { Clock } from '../time/clock.ts';
import { mostAtOnce } from './peak.ts';
import { buildersAt } from './resources.ts';
import type { Load } from '../result.ts';
import type { Scheduled } from './schedule-runs.ts';

/** So many of a resource, from one minute until another. */
interface Use {
  readonly resource: number;
  readonly count: number;
  readonly from: number;
  readonly to: number;
  /** Of one of them. */
  readonly minutes: number;
}

/**
 * How busy builders, places and tools are in a span of time: with hands on, while models wait in them, and held over
 * several steps. Builders are free while hands-on is paused.
 *
 * @param span  On the plan's clock.
 */
export function loadsOf(
  { problem, resources, ...scheduled }: Scheduled,
  clock: Clock,
  span: { readonly from: number; readonly to: number },
): readonly Load[] {
  const uses = problem.capacities.map((): Use[] => []);
  const [from, to] = [span.from - clock.origin, span.to - clock.origin];
  const all = [...usesByJobs({ problem, ...scheduled }), ...usesByHolds({ problem, ...scheduled }, from)];
  for (const use of all) uses[use.resource]!.push(use);
  return resources.names.map(({ kind, id }, resource) => {
    const own = uses[resource]!;
    const has = problem.capacities[resource]!;
    const minutes = own.reduce((sum, use) => sum + use.count * use.minutes, 0);
    const each = resource === buildersAt ? minutesOpen(clock.calendar, from, to) : to - from;
    return { kind, id, has, peak: mostAtOnce(own), minutes, available: has * each };
  });
}

type Times = Pick<Scheduled, 'problem' | 'starts' | 'ends'>;

function usesByJobs({ problem, starts, ends }: Times): Use[] {
  return problem.demands.flatMap((demand, job) => {
    const [from, to] = [starts[job]!, ends[job]!];
    const minutes = (resource: number): number =>
      resource === buildersAt ? problem.durations[job]! : to - from;
    return demand.map((count, resource) => ({ resource, count, from, to, minutes: minutes(resource) }));
  });
}

/** @param first  What models are in when work begins is counted from then on. */
function usesByHolds({ problem: { holds = [] }, starts, ends }: Times, first: number): Use[] {
  const minute = ([job, edge]: Moment): number => (edge === 'start' ? starts : ends)[job]!;
  return holds.flatMap(({ resource, count, from: begins, to: stops }) => {
    const from = Math.max(first, Math.min(...begins.map(minute)));
    const to = Math.max(...stops.map(minute));
    return to > from ? [{ resource, count, from, to, minutes: to - from }] : [];
  });
}

function minutesOpen(calendar: Calendar, from: number, to: number): number {
  return stretchesOf(calendar, from, to).reduce((sum, [opens, closes]) => sum + closes - opens, 0);
}
