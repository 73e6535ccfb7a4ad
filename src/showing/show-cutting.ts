import type { Workspace } from '../core/model/workspace.ts';
import type { CutLayout, CuttingPlan, Plan } from '../core/plan/result.ts';
import { ceil, floor } from '../core/quantity/exact.ts';
import { cuttingWords as words } from '../words/cutting.ts';
import type { nouns } from '../words/units.ts';
import { showAmount } from './amounts.ts';
import { cutAlike } from './cut-alike.ts';
import { counted, fill, listed, noBreak } from './fill.ts';
import { showArea, showLength } from './millimetres.ts';
import { showMoney } from './money.ts';
import { materialName } from './names.ts';
import { showCount } from './numbers.ts';
import { showLayout } from './show-layout.ts';
import type { ShownCutting } from './shown-cutting.ts';
import { shown } from './shown.ts';

/** How each material that comes in sheets, on rolls or in lengths is cut, and how near that is to the least. */
export function showCutting(key: string, plan: Plan, workspace: Workspace): readonly ShownCutting[] {
  return plan.cutting.map((cutting, i) => showMaterial(`${key}[${i}]`, cutting, plan, workspace));
}

function showMaterial(key: string, cutting: CuttingPlan, plan: Plan, workspace: Workspace): ShownCutting {
  const { material, by, layouts } = cutting;
  return {
    material,
    by,
    name: shown(`${key}.name`, materialName(material, workspace)),
    says: shown(`${key}.says`, saysText(cutting)),
    bound: shown(`${key}.bound`, boundText(cutting, workspace)),
    layouts: cutAlike(layouts).map((alike, i) => showLayout(`${key}.layouts[${i}]`, alike, by, plan.lines)),
  };
}

const nounOf = { sheets: 'sheet', roll: 'roll', lengths: 'length' } as const satisfies Record<
  CuttingPlan['by'],
  keyof typeof nouns
>;

/** "2 sheets of 600 mm × 450 mm; 83 % used." */
function saysText({ by, layouts, usedFraction }: CuttingPlan): string {
  const kinds = [...new Set(layouts.map(kindOf))];
  const what = kinds.map((kind) => {
    const alike = layouts.filter((layout) => kindOf(layout) === kind);
    const { pack, width, length } = alike[0]!;
    const facts = {
      count: counted(alike.length, nounOf[by]),
      size: by === 'lengths' ? showLength(length) : showArea(width, length),
    };
    return fill(pack === undefined ? words.cutFromStock : words.cutFrom, facts);
  });
  const used = `${showCount(floor(usedFraction.mul(100)))}${noBreak}%`;
  return fill(words.says, { what: listed(what), used });
}

/** Bought or from stock, and the size. */
function kindOf({ pack, width, length }: CutLayout): string {
  return [pack === undefined ? 'stock' : 'bought', width.toFraction(), length.toFraction()].join(' ');
}

function boundText(cutting: CuttingPlan, workspace: Workspace): string {
  const { bound, reached } = cutting;
  return reached.compare(bound.value) <= 0
    ? words.least[bound.of]
    : fill(words.gap[bound.of], { gap: gapText(cutting, workspace) });
}

/** By how much another plan might be less. Of sheets whole ones: none takes a part of one. */
function gapText({ by, bound, reached }: CuttingPlan, { program }: Workspace): string {
  const gap = reached.sub(bound.value);
  if (bound.of === 'cost') return showMoney(gap, program, 'up');
  if (bound.of === 'sheets') return counted(ceil(reached) - ceil(bound.value), nounOf[by]);
  return showAmount({ value: gap, unit: by === 'sheets' ? 'mm²' : 'mm' });
}
