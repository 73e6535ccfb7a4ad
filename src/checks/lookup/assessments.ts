import type { Module, Objective } from '../../core/model/module.ts';
import type { Way } from './context.ts';

/** Something by which an objective is judged. */
export interface Assessment {
  readonly kind: 'item' | 'rating' | 'question';
  /** A question may have none. */
  readonly id?: string;
  readonly says: string;
  /** The way to it in its module. */
  readonly way: Way;
  readonly objectives: readonly string[];
}

/** Items and ratings of the scoring, and the questions that trainees answer alone. */
export function assessmentsOf({ scoring, selfCheck }: Module): readonly Assessment[] {
  const listed = <T>(rows: readonly T[], kind: Assessment['kind'], says: (row: T) => string, ...list: Way) =>
    rows.map((row, i) => ({ ...row, kind, says: says(row), way: [...list, i] }));
  return [
    ...listed(scoring?.items ?? [], 'item', ({ says }) => says, 'scoring', 'items'),
    ...listed(scoring?.ratings ?? [], 'rating', ({ says, id }) => says ?? id, 'scoring', 'ratings'),
    ...listed(selfCheck, 'question', ({ ask }) => ask, 'self-check'),
  ];
}

/** Whether it judges an objective: either may name the other. */
export function judges({ id, objectives }: Assessment, objective: Objective): boolean {
  return objectives.includes(objective.id) || (id !== undefined && objective.assessedBy.includes(id));
}

/** All that an objective may name as what it is assessed by. */
export function assessmentIds(module: Module): readonly string[] {
  return assessmentsOf(module).flatMap(({ id }) => (id === undefined ? [] : [id]));
}

/** All that an objective may name as where it is practised. */
export function practiceIds({ stations, activities }: Module): readonly string[] {
  return [...stations, ...activities].map(({ id }) => id);
}
