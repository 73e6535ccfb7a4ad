import { z } from 'zod';
import { text, texts } from './kinds.ts';

/** The keys of `tools/<id>.yaml`. */
export const toolShape = z.strictObject({
  name: text,
  price: text.optional(),
  priced: text.optional(),
  lasts: text.optional(),
  reads: text.optional(),
  also: texts.optional(),
});
