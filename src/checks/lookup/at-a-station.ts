import type { Station } from '../../core/model/module.ts';
import type { CohortPlan } from '../../core/plan/cohort/cohort.ts';
import { seatsOf } from '../../core/plan/cohort/turns.ts';

/** People in the largest group of trainees; 0 where there are none. */
export function largestGroup({ people }: CohortPlan): number {
  const trainees = people.filter(({ as }) => as.includes('trainees'));
  return Math.max(0, ...trainees.flatMap(({ groups }) => groups));
}

/** How many people take turns at one seat, at most. */
export function sharing(station: Station, group: number): number {
  const evenly = Math.ceil(group / Math.max(1, seatsOf(station, group)));
  return Math.max(1, Math.min(station.atOne, evenly));
}
