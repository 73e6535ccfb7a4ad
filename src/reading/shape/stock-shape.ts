import { z } from 'zod';
import { namedTexts, text } from './kinds.ts';

/** The keys of what stands under `models` in a stock file; its other keys are materials. */
export const finishedShape = z.array(
  z.strictObject({
    guide: text,
    level: text.optional(),
    part: text.optional(),
    count: text.optional(),
    past: namedTexts.optional(),
  }),
);
export type FinishedShape = z.infer<typeof finishedShape>;
