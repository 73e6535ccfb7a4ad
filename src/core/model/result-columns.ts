import type { Scoring, SurveyItem } from './module.ts';

/**
 * Columns of the tables that results are kept in. What an author names stands behind a dot, so that no id can be taken
 * for a column that every table has.
 */

/**
 * Of a score sheet, a row for each person and rater.
 *
 *     person, group, rater, seconds, item.tip-in-view, rating.flow, penalty.1
 */
export function scoreColumns({ limit, items, ratings, penalties }: Scoring): readonly string[] {
  return [
    ...['person', 'group', 'rater'],
    ...(limit ? ['seconds'] : []),
    ...items.map(({ id }) => `item.${id}`),
    ...ratings.map(({ id }) => `rating.${id}`),
    ...penalties.map((_, index) => `penalty.${index + 1}`),
  ];
}

/**
 * Of a survey, a row for each person who answers; `undefined` where nothing is asked then.
 *
 *     person, people, answer.sure
 *
 * @param people  Whom it is asked of, by id.
 */
export function surveyColumns(
  surveys: readonly SurveyItem[],
  when: 'before' | 'after',
  people?: string,
): readonly string[] | undefined {
  const asked = surveys.filter(
    (item) =>
      item.asked.includes(when) && (people === undefined || item.of.length === 0 || item.of.includes(people)),
  );
  return asked.length === 0 ? undefined : ['person', 'people', ...asked.map(({ id }) => `answer.${id}`)];
}
