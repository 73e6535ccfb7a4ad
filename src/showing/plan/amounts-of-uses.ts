import type { Size } from '../../core/model/values.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { PlannedLine } from '../../core/plan/result.ts';
import type { Measure } from '../../core/quantity/quantity.ts';
import { showExactly, showSize } from '../text/amounts.ts';
import { roundedFor, roundedTotal } from './shares.ts';
import { type Units, inSystems } from '../text/systems.ts';

/** An amount of something, as finely as the tools of its steps read, in the units of the program. */
export function showFor(
  line: PlannedLine,
  use: string,
  amount: Measure,
  { tools, program }: Workspace,
): string {
  return inSystems(program.units, (system) =>
    showExactly(roundedFor({ line, use, tools, system }, amount), system),
  );
}

/** All that a line needs of something: what its steps take adds up to it. */
export function showTotal(line: PlannedLine, use: string, { tools, program }: Workspace): string {
  return inSystems(program.units, (system) =>
    showExactly(roundedTotal({ line, use, tools, system }), system),
  );
}

/** "150 mm × 100 mm (5 7/8 in × 3 15/16 in)". */
export function showSizeIn(units: Units, size: Size): string {
  return inSystems(units, (system) => showSize(size, system));
}
