import { z } from 'zod';
import { dates, days, open, places, text, texts } from './kinds.ts';

/** The keys of `program.yaml`. */
export const programShape = z.strictObject({
  name: text,
  locale: text.optional(),
  'time-zone': text,
  currency: text,
  exchange: z.record(z.string(), z.strictObject({ rate: text, on: text })).optional(),
  units: text.optional(),
  paper: text.optional(),
  work: z
    .strictObject({ days: days.optional(), hours: open.optional(), closed: dates.optional() })
    .optional(),
  builders: text.optional(),
  labour: text.optional(),
  stations: places.optional(),
  owned: places.optional(),
  room: texts.optional(),
  spares: text.optional(),
  suppliers: z
    .record(
      z.string(),
      z.strictObject({
        name: text,
        delivery: text.optional(),
        'free-over': text.optional(),
        'arrives-in': text.optional(),
      }),
    )
    .optional(),
  address: text.optional(),
  policy: z
    .strictObject({ contact: text.optional(), link: text.optional(), note: text.optional() })
    .optional(),
  'say-also': z.record(z.string(), texts).optional(),
  follows: open.optional(),
});
export type ProgramShape = z.infer<typeof programShape>;
