import type { Workspace } from '../../core/model/workspace.ts';
import type { CutLayout, CuttingPlan, Plan } from '../../core/plan/result.ts';
import { ceil } from '../../core/quantity/exact.ts';
import { cuttingWords as words } from '../../words/cutting.ts';
import { showAmount } from '../text/amounts.ts';
import { cutAlike } from './cut-alike.ts';
import { counted, fill, listed } from '../text/fill.ts';
import { showMoney } from '../text/money.ts';
import { materialName } from '../text/names.ts';
import { showPercentDown } from '../text/percent.ts';
import { sheetNouns, showLayout, whatText } from './show-layout.ts';
import type { ShownCutting } from '../shown/shown-cutting.ts';
import { shown } from '../shown/shown.ts';
import { type Units, inSystems } from '../text/systems.ts';

/** How a material that comes in sheets, on rolls or in lengths is cut, and how near that is to the least. */
export function showCutting(
  key: string,
  cutting: CuttingPlan,
  plan: Plan,
  workspace: Workspace,
): ShownCutting {
  const { material, by, layouts } = cutting;
  const { units } = workspace.program;
  return {
    material,
    by,
    name: shown(`${key}.name`, materialName(material, workspace)),
    says: shown(`${key}.says`, saysText(cutting, units)),
    used: shown(`${key}.used`, usedText(cutting)),
    bound: shown(`${key}.bound`, boundText(cutting, workspace)),
    isLeast: isLeast(cutting),
    layouts: cutAlike(layouts).map((alike, i) =>
      showLayout(`${key}.layouts[${i}]`, alike, cutting, plan, units),
    ),
  };
}

/** "2 sheets of 600 mm × 450 mm; 83 % used." */
function saysText(cutting: CuttingPlan, units: Units): string {
  const { by, layouts } = cutting;
  const kinds = [...new Set(layouts.map(kindOf))];
  const what = kinds.map((kind) => {
    const alike = layouts.filter((layout) => kindOf(layout) === kind);
    return whatText(alike[0]!, alike.length, by, units);
  });
  return fill(words.says, { what: listed(what), used: usedText(cutting) });
}

function usedText({ by, usedFraction }: CuttingPlan): string {
  return fill(words.used[by], { share: showPercentDown(usedFraction) });
}

/** Bought or from stock, and the size. */
function kindOf({ pack, width, length }: CutLayout): string {
  return [pack === undefined ? 'stock' : 'bought', width.toFraction(), length.toFraction()].join(' ');
}

function boundText(cutting: CuttingPlan, workspace: Workspace): string {
  const { of } = cutting.bound;
  return isLeast(cutting) ? words.least[of] : fill(words.gap[of], { gap: gapText(cutting, workspace) });
}

function isLeast({ bound, reached }: CuttingPlan): boolean {
  return reached.compare(bound.value) <= 0;
}

/** By how much another plan might be less. Of sheets whole ones: none takes a part of one. */
function gapText({ by, bound, reached }: CuttingPlan, { program }: Workspace): string {
  const gap = reached.sub(bound.value);
  if (bound.of === 'cost') return showMoney(gap, program, 'up');
  if (bound.of === 'sheets') return counted(ceil(reached) - ceil(bound.value), sheetNouns[by]);
  const amount = { value: gap, unit: by === 'sheets' ? 'mm²' : 'mm' };
  return inSystems(program.units, (system) => showAmount(amount, undefined, system));
}
