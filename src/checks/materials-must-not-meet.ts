import { materialsOf } from '../core/plan/scale/step-uses.ts';
import type { Check, Finding } from './check.ts';
import type { Context, GuideAtLevel } from './lookup/context.ts';

/** Two materials of one step that must not meet: one stops the other's cure, or together they hurt. */
export const materialsMustNotMeet: Check = {
  code: 'materials-must-not-meet',
  gravity: 'stops',
  find: (context) => context.guidesAt.flatMap((read) => ofGuide(read, context)),
};

function ofGuide(read: GuideAtLevel, { workspace: { materials }, origins }: Context): readonly Finding[] {
  return read.at.steps.flatMap((step, index) => {
    const met = materialsOf(read.at, step);
    return met.flatMap((id) =>
      (materials[id]?.notWith ?? []).flatMap((other, i) => {
        // Where each names the other it is told once.
        const isTold = materials[other]?.notWith.includes(id) && met.indexOf(other) < met.indexOf(id);
        if (!met.includes(other) || isTold) return [];
        const facts = {
          step: read.stepName(step.id),
          one: materials[id]!.name,
          other: materials[other]?.name ?? other,
        };
        return [
          {
            places: [
              origins.at(`materials/${id}/not-with/${i}`),
              read.place('steps', index, 'uses'),
            ] as const,
            facts,
          },
        ];
      }),
    );
  });
}
