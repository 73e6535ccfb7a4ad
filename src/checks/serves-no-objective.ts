import type { Module } from '../core/model/module.ts';
import { assessmentIds, assessmentsOf, judges, practiceIds, type Assessment } from './lookup/assessments.ts';
import type { Check, Finding } from './check.ts';
import type { ModuleRead } from './lookup/context.ts';

/**
 * Something that is judged or practised, and that no objective asks for. Where an objective names what is not there,
 * that is told instead: it may be meant.
 */
export const servesNoObjective: Check = {
  code: 'serves-no-objective',
  gravity: 'incomplete',
  find: ({ modules }) => modules.flatMap((read) => [...judged(read), ...practised(read)]),
};

function judged({ module, place }: ModuleRead): readonly Finding[] {
  const { objectives } = module;
  const named = objectives.flatMap(({ assessedBy }) => assessedBy);
  if (isMisnamed(named, [...assessmentIds(module), ...module.surveys.map(({ id }) => id)])) return [];
  const isAsked = (one: Assessment): boolean =>
    one.objectives.length > 0 || objectives.some((objective) => judges(one, objective));
  const known = objectives.map(({ id }) => id).join(', ');
  return assessmentsOf(module)
    .filter((one) => !isAsked(one))
    .map(({ kind, says, way, id }) => ({
      variant: kind,
      places: [place(...way, kind === 'question' ? 'ask' : 'id')],
      facts: { name: id ?? says, text: says, known },
    }));
}

function practised({ module, place }: ModuleRead): readonly Finding[] {
  const named = module.objectives.flatMap(({ practisedAt }) => practisedAt);
  if (isMisnamed(named, practiceIds(module))) return [];
  const unasked = (list: 'stations' | 'activities', variant: string): readonly Finding[] =>
    module[list].flatMap(({ id }: Module['activities' | 'stations'][number], i) =>
      named.includes(id) ? [] : [{ variant, places: [place(list, i, 'id')], facts: { name: id } }],
    );
  return [...unasked('stations', 'station'), ...unasked('activities', 'activity')];
}

const isMisnamed = (named: readonly string[], known: readonly string[]): boolean =>
  named.some((name) => !known.includes(name));
