import type { Module } from '../core/model/module.ts';
import { scoreColumns, surveyColumns } from '../core/model/result-columns.ts';
import { csvText } from './csv-text.ts';

/** An empty score sheet as a table: its columns are those that results are read by. `undefined` where nothing is scored. */
export function scoreSheetCsv({ scoring }: Module): string | undefined {
  return scoring && csvText(scoreColumns(scoring), []);
}

/**
 * An empty survey as a table, its columns those that results are read by. `undefined` where nothing is asked then.
 *
 * @param people  Whom it is asked of, by id; everybody's questions where left out.
 */
export function surveyCsv(
  { surveys }: Module,
  when: 'before' | 'after',
  people?: string,
): string | undefined {
  const columns = surveyColumns(surveys, when, people);
  return columns && csvText(columns, []);
}
