import type { Workspace } from '../../core/model/workspace.ts';
import type { Plan, Purchase, RowNeed } from '../../core/plan/result.ts';
import { exact, floor, zero } from '../../core/quantity/exact.ts';
import { dimensionOf } from '../../core/quantity/units.ts';
import { planWords } from '../../words/plan.ts';
import { roundedDown, showExactly } from '../text/amounts.ts';
import { counted, fill } from '../text/fill.ts';
import { inSystems } from '../text/systems.ts';

/**
 * What is left over: of whole packs, and of what does several models and was bought whole for fewer.
 *
 *     a can of 400 mL does 30 models; for 12 of them: 240 mL left
 */
export function leftText({ left, material }: Purchase, plan: Plan, { program }: Workspace): string {
  if (left.value.equals(zero)) return planWords.none;
  const opened = openedRows(material, plan);
  if (dimensionOf(left.unit) !== 'count' || opened.length === 0)
    return inSystems(program.units, (system) => showExactly(roundedDown(left, system), system));
  const whole = exact(floor(left.value));
  return whole.equals(zero) ? modelsText(opened) : showExactly({ ...left, value: whole });
}

/** A row that does several models. */
interface Opened {
  readonly need: RowNeed;
  readonly does: number;
}

function openedRows(material: string, { lines }: Plan): readonly Opened[] {
  return lines.flatMap(({ rows, at }) =>
    rows.flatMap((need) => {
      const { use, does } = at.materials[need.row]!;
      return use === material && does !== undefined ? [{ need, does }] : [];
    }),
  );
}

/** Of what is counted, for how many models the rest is enough: "enough for 8 models". */
function modelsText(opened: readonly Opened[]): string {
  const models = opened.map(({ need: { unused, one }, does }) =>
    floor(unused.value.div(one.value.equals(zero) ? exact(1) : one.value.div(does))),
  );
  return fill(planWords.shopping.leftOfDoes, {
    models: counted(
      models.reduce((a, b) => a + b, 0),
      'model',
    ),
  });
}
