import { z } from 'zod';
import type { Raw } from '../sheet/sheet.ts';

/** The four kinds that a shape is made of. What a text means is for a reader to say, not for the shape. */
export const text = z.string().min(1);
export const texts = z.array(text);
/** Keys of the author's own, with texts. */
export const namedTexts = z.record(z.string(), text);
/** A text, a list or keys: a reader of its own decides, because a union here would give useless messages. */
export const open = z.custom<Raw>();

/** What many write as they speak: "Mon-Fri", "12", "stove". The advice is what they meant, in full. */
export const spoken = z.registry<{
  readonly of: 'days' | 'dates' | 'hazards' | 'people' | 'pass' | 'places';
}>();
export const days = z.array(text).register(spoken, { of: 'days' });
export const dates = z.array(text).register(spoken, { of: 'dates' });
/** Places and tools, with how many of each. */
export const places = z.record(z.string(), text).register(spoken, { of: 'places' });

/** The kind of a value that may be left out. */
export const unwrapped = (schema: z.ZodType): z.ZodType =>
  schema instanceof z.ZodOptional ? unwrapped(schema.unwrap() as z.ZodType) : schema;
