import type { Plan, Purchase, RowNeed } from '../core/plan/result.ts';
import { type Exact, exact, floor, zero } from '../core/quantity/exact.ts';
import { type Measure, convert } from '../core/quantity/quantity.ts';
import { dimensionOf } from '../core/quantity/units.ts';
import { planWords } from '../words/plan.ts';
import { roundedDown, showExactly } from './amounts.ts';
import { counted, fill } from './fill.ts';

/**
 * What is left over: of whole packs, and of what does several models and was bought whole for fewer.
 *
 *     a can of 400 mL does 30 models; for 12 of them: 240 mL left
 */
export function leftText(purchase: Purchase, plan: Plan): string {
  const { left } = purchase;
  const opened = openedRows(purchase.material, plan);
  const whole = left.value.add(unusedOf(opened, left.unit));
  if (whole.equals(zero)) return planWords.none;
  if (dimensionOf(left.unit) !== 'count' || opened.length === 0) {
    return showExactly(roundedDown({ value: whole, unit: left.unit }));
  }
  return left.value.equals(zero) ? modelsText(opened) : showExactly(left);
}

/** What models take, without what stays in a can that does more of them. */
export function usedOf({ material, needed }: Purchase, plan: Plan): Measure {
  return { ...needed, value: needed.value.sub(unusedOf(openedRows(material, plan), needed.unit)) };
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

function unusedOf(opened: readonly Opened[], unit: string): Exact {
  return opened.reduce((sum, { need: { total, usual } }) => {
    const unused: Measure = { value: total.value.sub(usual.value), unit: total.unit };
    return unused.value.equals(zero) ? sum : sum.add(convert(unused, unit).value);
  }, zero);
}

/** Of what is counted, for how many models the rest is enough: "enough for 8 models". */
function modelsText(opened: readonly Opened[]): string {
  const models = opened.map(({ need: { total, usual, one }, does }) =>
    floor(total.value.sub(usual.value).div(one.value.equals(zero) ? exact(1) : one.value.div(does))),
  );
  return fill(planWords.shopping.leftOfDoes, {
    models: counted(
      models.reduce((a, b) => a + b, 0),
      'model',
    ),
  });
}
