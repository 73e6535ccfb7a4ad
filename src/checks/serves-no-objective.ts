import type { Module } from '../core/model/module.ts';
import { assessmentsOf, judges } from './assessments.ts';
import type { Check, Finding } from './check.ts';
import type { ModuleRead } from './context.ts';

/** Something that is judged or practised, and that no objective asks for. */
export const servesNoObjective: Check = {
  code: 'serves-no-objective',
  gravity: 'incomplete',
  find: ({ modules }) => modules.flatMap((read) => [...judged(read), ...practised(read)]),
};

function judged({ module, place }: ModuleRead): readonly Finding[] {
  const isAsked = (one: ReturnType<typeof assessmentsOf>[number]): boolean =>
    one.objectives.length > 0 || module.objectives.some((objective) => judges(one, objective));
  const known = module.objectives.map(({ id }) => id).join(', ');
  return assessmentsOf(module)
    .filter((one) => !isAsked(one))
    .map(({ kind, says, way, id }) => ({
      variant: kind,
      places: [place(...way, kind === 'question' ? 'ask' : 'id')],
      facts: { name: id ?? says, text: says, known },
    }));
}

function practised({ module, place }: ModuleRead): readonly Finding[] {
  const asked = new Set(module.objectives.flatMap(({ practisedAt }) => practisedAt));
  const unasked = (list: 'stations' | 'activities', variant: string): readonly Finding[] =>
    module[list].flatMap(({ id }: Module['activities' | 'stations'][number], i) =>
      asked.has(id) ? [] : [{ variant, places: [place(list, i, 'id')], facts: { name: id } }],
    );
  return [...unasked('stations', 'station'), ...unasked('activities', 'activity')];
}
