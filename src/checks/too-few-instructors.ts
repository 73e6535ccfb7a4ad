import { cohortOf } from '../core/plan/cohort/cohort.ts';
import type { Check, Finding } from './check.ts';
import type { Context, ModuleRead } from './lookup/context.ts';

/** Fewer instructors than the ratio, or the stations that are led, ask for. */
export const tooFewInstructors: Check = {
  code: 'too-few-instructors',
  gravity: 'incomplete',
  find: ({ modules, workspace }) => modules.flatMap((read) => ofModule(read, workspace)),
};

function ofModule({ module, place }: ModuleRead, { guides }: Context['workspace']): readonly Finding[] {
  const { people, instructors } = cohortOf(module, guides);
  const { needed, there = needed } = instructors;
  if (there >= needed) return [];
  const trainees = people.filter(({ as }) => as.includes('trainees'));
  const count = trainees.reduce((sum, kind) => sum + kind.count, 0);
  const led = module.stations.filter((station) => station.led).length;
  const { ratio } = module.cohort;
  const facts = { module: module.title, there: String(there), needed: String(needed), led: String(led) };
  const isByRatio = ratio !== undefined && Math.ceil(count / ratio) === needed;
  return [
    {
      variant: isByRatio ? 'ratio' : 'led',
      places: [place('cohort', 'instructors'), ...(isByRatio ? [place('cohort', 'ratio')] : [])],
      facts: { ...facts, trainees: String(count), ratio: String(ratio) },
    },
  ];
}
