import { given } from '../core/given.ts';
import type { Workspace } from '../core/model/workspace.ts';
import type { DemandLine, PlanSettings } from '../core/plan/demand.ts';
import type { OwnSettings } from '../core/plan/own/own-settings.ts';
import type { PageData } from '../core/plan/own/page-data.ts';
import { workspaceOf } from '../core/plan/own/workspace-of.ts';
import type { Plan } from '../core/plan/result.ts';
import { addressOf } from '../exports/plan-address.ts';
import type { Values } from './options.ts';

/**
 * What a plan of one line was made with, as the query by which the guide's page shows the same. A page knows good
 * models alone: spares are counted in. Finished models and the effort of the search have no place in an address.
 *
 * @param published  The workspace as its files have it.
 */
export function planQuery(
  { guide, level, part }: DemandLine,
  plan: Plan,
  { today, builders, start, readyBy, margin, goodUntil, stock = {} }: PlanSettings,
  { units, paper }: Values,
  published: Workspace,
): string {
  const { wanted, forOthers = 0, spares } = plan.lines[0]!;
  const workspace = workspaceOf(published, guide);
  const own = Object.entries(stock).filter(([id]) => Object.hasOwn(workspace.materials, id));
  const settings = given<OwnSettings>({
    batch: wanted - forOthers + spares,
    part,
    builders,
    start,
    readyBy,
    margin,
    goodUntil,
    units,
    paper,
    stock: own.length === 0 ? undefined : Object.fromEntries(own),
  });
  return addressOf(settings, given<PageData>({ guide, level, today, workspace }));
}
