import { z } from 'zod';
import { namedTexts, spoken, text, texts } from './kinds.ts';

/** The keys of `materials/<id>.yaml`. */
export const materialShape = z.strictObject({
  name: text,
  must: texts.optional(),
  form: text.optional(),
  packs: z
    .array(
      z.strictObject({
        holds: text,
        price: text.optional(),
        priced: text.optional(),
        from: text.optional(),
        code: text.optional(),
        link: text.optional(),
        'arrives-in': text.optional(),
      }),
    )
    .optional(),
  free: text.optional(),
  density: z.strictObject({ is: text, source: text.optional() }).optional(),
  keeps: z.strictObject({ closed: text.optional(), opened: text.optional() }).optional(),
  times: namedTexts.optional(),
  directions: z
    .strictObject({ says: text.optional(), link: text.optional(), dated: text.optional() })
    .optional(),
  hazards: z.array(text).register(spoken, { of: 'hazards' }).optional(),
  precautions: texts.optional(),
  also: texts.optional(),
  'data-sheet': z.strictObject({ link: text.optional(), dated: text.optional() }).optional(),
  'not-with': texts.optional(),
  instead: z
    .array(
      z.strictObject({ use: text, ratio: text.optional(), tried: text.optional(), note: text.optional() }),
    )
    .optional(),
});
export type MaterialShape = z.infer<typeof materialShape>;
