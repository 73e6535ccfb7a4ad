import { meaningOf, usesOf } from '../core/plan/scale/step-uses.ts';
import type { Check, Finding } from './check.ts';
import type { GuideAtLevel } from './lookup/context.ts';
import { placeOfUse } from './lookup/step-uses.ts';
import { the, unknownNames } from './lookup/unknown-names.ts';

/** A piece that a step uses, and that its material is not cut into. */
export const unknownPiece: Check = {
  code: 'unknown-piece',
  gravity: 'stops',
  find: ({ guidesAt }) => guidesAt.flatMap(ofGuide),
};

function ofGuide(read: GuideAtLevel): readonly Finding[] {
  return read.at.steps.flatMap((step, index) =>
    usesOf(read.at, step).flatMap(({ material, pieces = [] }, use) => {
      const rows = meaningOf(read.at, material).rows;
      const known = rows.flatMap((row) => read.at.materials[row]!.pieces.map(({ id }) => id));
      const named = pieces.map((name, i) => ({
        name,
        place: placeOfUse(read, index, use, 'pieces', i),
        who: the('step', read.stepName(step.id)),
        put: (id: string) => id,
      }));
      const found = rows.length > 0 ? unknownNames(named, known) : [];
      return found.map((finding) => ({ ...finding, facts: { ...finding.facts, material } }));
    }),
  );
}
