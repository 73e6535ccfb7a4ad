import { modelsServed } from '../core/plan/scale/runs.ts';
import type { StepAt } from '../core/plan/scale/step-uses.ts';
import type { Check, Finding } from './check.ts';
import type { Context, GuideAtLevel, Way } from './lookup/context.ts';

/** A run that takes more builders, or more of a place, than the program has: there is no schedule with it. */
export const moreThanThereIs: Check = {
  code: 'more-than-there-is',
  gravity: 'local',
  find: (context) =>
    context.guidesAt.flatMap((read) => read.at.steps.flatMap((step, i) => ofStep(read, step, i, context))),
};

/** So many at once of a place. */
interface Taken {
  readonly place: string;
  readonly count: number;
  readonly way: Way;
}

function ofStep(read: GuideAtLevel, step: StepAt, index: number, { workspace }: Context): readonly Finding[] {
  const { builders, stations } = workspace.program;
  const name = read.stepName(step.id);
  const tooMany = placesTaken(read, step, index).filter(
    ({ place, count }) => count > (stations[place] ?? count),
  );
  const places = tooMany.map(({ place, count, way }) => ({
    variant: 'place',
    places: [read.place(...way)] as const,
    facts: { step: name, place, takes: String(count), has: String(stations[place]) },
  }));
  if (step.people <= builders) return places;
  const facts = { step: name, takes: String(step.people), has: String(builders) };
  return [{ variant: 'builders', places: [read.place('steps', index, 'people')], facts }, ...places];
}

/** By one full run, in the batch that is published. */
function placesTaken({ at }: GuideAtLevel, step: StepAt, index: number): readonly Taken[] {
  const batch = at.states?.for ?? 1;
  const models = Math.min(batch, modelsServed(at, step.for, batch));
  return [
    ...Object.entries(step.at).map(([place, count]) => ({
      place,
      count,
      way: ['steps', index, 'at', place],
    })),
    ...Object.entries(step.waitsAt).map(([place, { count, per }]) => ({
      place,
      count: per === 'run' ? count : count * models,
      way: ['steps', index, 'waits-at', place],
    })),
  ];
}
