import type { Guide } from '../../core/model/guide.ts';
import type { Plan } from '../../core/plan/result.ts';
import { makePlan } from '../../core/plan/plan.ts';
import type { Context } from './context.ts';
import { materialsNamed } from './usage.ts';

/**
 * The plans that stated figures speak of: so many models as they are stated for, by so many builders, at the usual
 * level, in the reference week. None of a guide without stated figures, or of one that cannot be computed.
 *
 * @param isCompared  Whether a guide of that id is to be planned: not one with findings that stop computing.
 */
export function plansOf(
  context: Context,
  isCompared: (id: string) => boolean,
): (guide: Guide) => Plan | undefined {
  const known = new Map<string, Plan | undefined>();
  return (guide) => {
    if (!known.has(guide.id))
      known.set(guide.id, isCompared(guide.id) ? statedPlan(guide, context) : undefined);
    return known.get(guide.id);
  };
}

function statedPlan(guide: Guide, { workspace, today }: Context): Plan | undefined {
  const { states } = guide;
  const isReadable = [...materialsNamed(guide)].every((id) => Object.hasOwn(workspace.materials, id));
  if (!states || !isReadable) return undefined;
  const demand = [{ guide: guide.id, wanted: states.for }];
  const plan = makePlan(workspace, demand, { builders: states.builders, today });
  return 'refused' in plan ? undefined : plan;
}
