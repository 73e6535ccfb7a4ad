import type { Objective } from '../core/model/module.ts';
import { assessmentsOf, judges } from './lookup/assessments.ts';
import type { Check, Finding } from './check.ts';
import type { ModuleRead } from './lookup/context.ts';

/**
 * Something that trainees are to show, judged by questions that they answer alone.
 *
 * @source Miller, The assessment of clinical skills, competence, performance (1990): who knows how has not shown how.
 */
export const skillOnlyAskedAbout: Check = {
  code: 'skill-only-asked-about',
  gravity: 'incomplete',
  find: ({ modules }) =>
    modules.flatMap((read) =>
      read.module.objectives.flatMap((objective, i) => ofObjective(read, objective, i)),
    ),
};

function ofObjective({ module, place }: ModuleRead, objective: Objective, index: number): readonly Finding[] {
  const own = assessmentsOf(module).filter((one) => judges(one, objective));
  const isAskedOnly = own.length > 0 && own.every(({ kind }) => kind === 'question');
  if (objective.shownBy !== 'shows-how' || !isAskedOnly) return [];
  const items = [...(module.scoring?.items ?? []), ...(module.scoring?.ratings ?? [])].map(({ id }) => id);
  return [
    {
      variant: items.length === 0 ? 'none' : undefined,
      places: [place('objectives', index, 'shown-by'), ...own.map(({ way }) => place(...way, 'ask'))],
      facts: { objective: objective.id, known: items.join(', ') },
    },
  ];
}
