import type { Money } from '../../core/model/values.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { workspaceOf } from '../../core/plan/own/workspace-of.ts';
import { moneyText } from '../../exports/money-text.ts';
import { labourText, packsText } from '../../exports/setting-texts.ts';
import { materialName, toolName } from '../../showing/text/names.ts';
import type { PlannerView } from '../../../templates/guide/guide-planner.tsx';
import type { PlannedGuide } from '../planned/planned-guides.ts';

/** What the panel of a guide's page begins with: what the page was published with. */
export function plannerView({ written, level, isUsual }: PlannedGuide, whole: Workspace): PlannerView {
  const workspace = workspaceOf(whole, written.id);
  const { program } = workspace;
  return {
    guide: written.id,
    ...(level === undefined ? {} : { level }),
    data: `${isUsual ? '' : '../'}planner-data.js`,
    batch: String(written.states?.for ?? 1),
    builders: String(program.builders),
    units: program.units,
    paper: program.paper,
    labour: program.labour ? labourText(program.labour) : '',
    otherLevels: written.levels.filter(({ id }) => id !== level),
    parts: written.parts,
    materials: bought(workspace),
    tools: Object.keys(workspace.tools).map((id) => ({
      id,
      name: toolName(id, workspace),
      owned: String(program.owned[id] ?? ''),
    })),
  };
}

/** What comes in packs, or would if somebody knew of one. */
function bought(workspace: Workspace): PlannerView['materials'] {
  const money = (price: Money): string => moneyText(price, workspace.program);
  return Object.entries(workspace.materials)
    .filter(([, { free }]) => !free)
    .map(([id, { packs }]) => ({ id, name: materialName(id, workspace), packs: packsText(packs, money) }));
}
