import type { GuideAt } from '../../core/model/guide.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { PlannedLine } from '../../core/plan/result.ts';
import { type ToolRowAt, toolsOf } from '../../core/plan/scale/step-uses.ts';
import { type Measure, compare, measure, sameDimension } from '../../core/quantity/quantity.ts';

/**
 * The finest that the tools of the steps which take something can read: a scale of 1 g, a jug of 10 mL.
 *
 * @param use   A row, a mix or an ingredient, as the steps name it.
 * @param unit  Any unit of the dimension that is measured.
 * @returns Absent where no such tool says what it reads: the usual reading holds.
 */
export function readingOf(
  line: PlannedLine,
  use: string,
  unit: string,
  tools: Workspace['tools'],
): Measure | undefined {
  const steps = line.steps.filter(({ takes }) => takes.some((take) => take.use === use));
  const rows = steps.flatMap(({ step }) => toolsAtHand(line.at, step));
  const readings = rows
    .map(({ use: tool }) => tools[tool]?.reads)
    .filter((reads) => reads !== undefined)
    .filter((reads) => sameDimension(reads.unit, unit))
    .map(measure);
  return readings.reduce<Measure | undefined>(finer, undefined);
}

function finer(finest: Measure | undefined, reading: Measure): Measure {
  return finest && compare(finest, reading) <= 0 ? finest : reading;
}

/** Tools at hand in a step: held over it, in hand there, or listed for the whole guide. */
function toolsAtHand(at: GuideAt, id: string): readonly ToolRowAt[] {
  const step = at.steps.find((known) => known.id === id);
  const listed = at.tools.filter(({ held, in: steps }) => !held && steps.length === 0);
  return step ? [...toolsOf(at, step), ...listed] : listed;
}
