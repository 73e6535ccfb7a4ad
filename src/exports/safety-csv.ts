import { registerWords } from '../words/register.ts';
import { csvText } from './csv-text.ts';

const { columns } = registerWords;

/** What a row says of a hazard at one step of one guide; several of a kind stand in one cell, a line each. */
export type SafetyRow = Readonly<Record<keyof typeof columns, string>>;

/** The register of hazards as a table: a row for each step where one is met, and one for what no guide uses. */
export function safetyCsv(rows: readonly SafetyRow[]): string {
  const keys = Object.keys(columns) as (keyof typeof columns)[];
  return csvText(
    Object.values(columns),
    rows.map((row) => keys.map((key) => row[key])),
  );
}
