import type { Workspace } from '../../core/model/workspace.ts';
import type { Plan, PlannedLine } from '../../core/plan/result.ts';
import { planWords } from '../../words/plan.ts';
import { sheetWords } from '../../words/sheets.ts';
import { showAsWritten } from '../text/amounts.ts';
import { properly } from '../text/author-text.ts';
import { capital, fill } from '../text/fill.ts';
import { materialDangers } from '../safety/product-dangers.ts';
import { materialName } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import { shown } from '../shown/shown.ts';
import type { ShownReading, ShownRecord } from '../shown/shown-sheets.ts';

const { record: words } = sheetWords;

/** Columns of readings that leave room to write in beside each other. */
const sideBySide = 4;

/** What is filed of one line of a plan: its lots, each model with its checks, how many were to be made. */
export function showRecord(key: string, plan: Plan, index: number, workspace: Workspace): ShownRecord {
  const line = plan.lines[index]!;
  return {
    lots: materialsOf(line, workspace).map((material, i) => ({
      id: material,
      name: shown(`${key}.lots[${i}].name`, materialName(material, workspace)),
      must: shown(
        `${key}.lots[${i}].must`,
        (workspace.materials[material]?.must ?? []).map(properly).join(planWords.listComma),
      ),
      dangers: shown(`${key}.lots[${i}].dangers`, materialDangers(material, workspace)),
    })),
    tables: inTables(readingsOf(`${key}.readings`, line)),
    models: Array.from({ length: line.made }, (_, i) => shown(`${key}.models[${i}]`, showCount(i + 1))),
    made: shown(`${key}.made`, fill(words.planned, { count: showCount(line.made) })),
  };
}

/** Materials that steps take, each once, in the order of the steps; what is free has no lot. */
function materialsOf({ steps }: PlannedLine, { materials }: Workspace): readonly string[] {
  const taken = steps.flatMap(({ takes }) => takes.flatMap(({ material }) => material ?? []));
  return [...new Set(taken)].filter((material) => !materials[material]?.free);
}

function readingsOf(key: string, { at }: PlannedLine): readonly ShownReading[] {
  return at.checks
    .filter(({ each }) => each === 'model')
    .map(({ id, measure, ask, target }, i) => ({
      id,
      what: shown(`${key}[${i}].what`, capital(properly(measure ?? ask ?? ''))),
      accept: shown(`${key}[${i}].accept`, acceptText(target)),
    }));
}

/** "accept 13.5 mm to 18.5 mm": the limits themselves, so that nobody adds at the bench. */
function acceptText(target: PlannedLine['at']['checks'][number]['target']): string {
  if (!target) return '';
  const [least, most] = [showAsWritten(target.least), showAsWritten(target.most)];
  const range = least === most ? properly(target.text) : fill(words.range, { least, most });
  return fill(words.accept, { range });
}

/** At least one table: without checks it still has a row a model. */
function inTables(readings: readonly ShownReading[]): readonly (readonly ShownReading[])[] {
  const count = Math.max(1, Math.ceil(readings.length / sideBySide));
  return Array.from({ length: count }, (_, i) => readings.slice(i * sideBySide, (i + 1) * sideBySide));
}
