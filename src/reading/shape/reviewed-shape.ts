import { z } from 'zod';
import { text, texts } from './kinds.ts';

/** The keys that guides and modules have alike. */
export const reviewedShape = z.strictObject({
  title: text,
  status: text.optional(),
  version: text.optional(),
  approved: z.strictObject({ by: text.optional(), on: text.optional(), until: text.optional() }).optional(),
  licence: text.optional(),
  summary: text.optional(),
  history: z.array(z.strictObject({ version: text, on: text.optional(), what: text })).optional(),
  sources: texts.optional(),
});
export type ReviewedShape = z.infer<typeof reviewedShape>;
