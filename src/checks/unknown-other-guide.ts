import type { Check } from './check.ts';
import { linkedTo, unknownNames } from './unknown-names.ts';
import { isGuideUse } from './usage.ts';

/** Another guide that a guide names, and that is not there. */
export const unknownOtherGuide: Check = {
  code: 'unknown-other-guide',
  gravity: 'stops',
  find: ({ guides, workspace, isThere }) =>
    guides.flatMap((read) => {
      const { id: own, materials } = read.guide;
      const rows = materials.flatMap(({ use }, i) =>
        isGuideUse(use)
          ? [
              {
                name: use.slice('guide:'.length),
                place: read.place('materials', i, 'use'),
                who: 'The list of materials',
                put: (id: string) => `use: guide:${id}`,
              },
            ]
          : [],
      );
      const others = Object.keys(workspace.guides).filter((id) => id !== own);
      return unknownNames([...rows, ...linkedTo(read, 'guide')], others, (name) => isThere('guides', name));
    }),
};
