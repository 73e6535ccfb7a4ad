import type { Check } from './check.ts';
import { unknownNames } from './lookup/unknown-names.ts';
import { directionsNamed } from './lookup/usage.ts';

/** A time that a wait takes from the directions of a material, and that these do not give. */
export const unknownTime: Check = {
  code: 'unknown-time',
  gravity: 'stops',
  find: ({ guides, workspace }) =>
    guides.flatMap((read) =>
      read.guide.steps.flatMap((step, i) =>
        directionsNamed(step).flatMap(({ material: id, time }) => {
          const material = workspace.materials[id];
          if (!material) return [];
          const named = {
            name: time,
            place: read.place('steps', i, 'wait'),
            who: `The wait of “${read.stepName(step.id)}”`,
            put: (known: string) => `as: ${id}.${known}`,
          };
          const found = unknownNames([named], Object.keys(material.times));
          return found.map((finding) => ({
            ...finding,
            facts: { ...finding.facts, material: material.name, id },
          }));
        }),
      ),
    ),
};
