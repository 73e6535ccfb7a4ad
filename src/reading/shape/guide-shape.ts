import { z } from 'zod';
import { open, places, text, texts } from './kinds.ts';
import { reviewedShape } from './reviewed-shape.ts';

const usedInUse = z.array(z.strictObject({ material: text, amount: text }));
const inUsePart = z.strictObject({ takes: text.optional(), do: text.optional(), uses: usedInUse.optional() });

const level = z.strictObject({ id: text, name: text.optional(), usual: text.optional() });
const part = z.strictObject({ id: text, name: text.optional(), lasts: text.optional() });
const keeping = z.strictObject({ for: text, at: text, how: text.optional(), source: text.optional() });

const ingredient = z.strictObject({
  use: text,
  amount: open,
  usual: open.optional(),
  until: text.optional(),
});
const mix = z.strictObject({
  id: text,
  name: text.optional(),
  makes: open,
  'left-behind': text.optional(),
  of: z.array(ingredient),
  only: texts.optional(),
});

const piece = z.strictObject({
  id: text,
  size: open.optional(),
  length: open.optional(),
  count: open.optional(),
  turn: text.optional(),
  pattern: text.optional(),
});
const materialRow = z.strictObject({
  id: text.optional(),
  use: text,
  amount: open.optional(),
  usual: open.optional(),
  count: open.optional(),
  length: open.optional(),
  pieces: z.array(piece).optional(),
  gap: text.optional(),
  waste: text.optional(),
  for: text.optional(),
  does: text.optional(),
  only: texts.optional(),
});

const toolRow = z.strictObject({
  use: text,
  count: text.optional(),
  holds: text.optional(),
  held: z.strictObject({ from: text, to: text }).optional(),
  in: texts.optional(),
  only: texts.optional(),
});

const step = z.strictObject({
  id: text.optional(),
  heading: text.optional(),
  for: text.optional(),
  'hands-on': open.optional(),
  people: text.optional(),
  at: places.optional(),
  wait: open.optional(),
  watched: text.optional(),
  'waits-at': places.optional(),
  'use-within': open.optional(),
  'may-pause': text.optional(),
  partial: text.optional(),
  after: texts.optional(),
  uses: z.array(open).optional(),
  set: z.record(z.string(), open).optional(),
  follow: text.optional(),
  controls: texts.optional(),
  ignition: text.optional(),
  'clears-in': text.optional(),
  only: texts.optional(),
});

const qualityCheck = z.strictObject({
  id: text,
  measure: text.optional(),
  target: open.optional(),
  ask: text.optional(),
  like: text.optional(),
  unlike: text.optional(),
  after: text.optional(),
  each: text.optional(),
  by: text.optional(),
  'if-not': open.optional(),
  only: texts.optional(),
});

const caution = z.strictObject({
  id: text,
  signal: text,
  steps: texts.optional(),
  hazard: text,
  harm: text.optional(),
  avoid: texts.optional(),
  only: texts.optional(),
});

const inUse = z.strictObject({
  'set-up': inUsePart.optional(),
  between: inUsePart.optional(),
  after: inUsePart.optional(),
  renew: z
    .array(
      z.strictObject({
        id: text,
        times: text.optional(),
        steps: texts.optional(),
        materials: usedInUse.optional(),
      }),
    )
    .optional(),
  dispose: z.strictObject({ to: text.optional(), not: text.optional() }).optional(),
  store: z.strictObject({ apart: text.optional(), how: text.optional() }).optional(),
  carry: z.strictObject({ size: text.optional(), weight: text.optional(), how: text.optional() }).optional(),
});

/** The keys of the front matter of `guides/<id>/guide.md`. */
export const guideShape = z.strictObject({
  ...reviewedShape.shape,
  trains: text.optional(),
  levels: z.array(level).optional(),
  zones: z.array(open).optional(),
  parts: z.array(part).optional(),
  'a-use-is': text.optional(),
  lasts: text.optional(),
  keeps: z.array(keeping).optional(),
  mixes: z.array(mix).optional(),
  materials: z.array(materialRow),
  patterns: z
    .array(z.strictObject({ id: text, file: text, on: text.optional(), does: text.optional() }))
    .optional(),
  tools: z.array(toolRow).optional(),
  steps: z.array(step),
  checks: z.array(qualityCheck).optional(),
  cautions: z.array(caution).optional(),
  'in-use': inUse.optional(),
  yields: text.optional(),
  electrosurgery: text.optional(),
  states: z
    .strictObject({
      for: text,
      builders: text.optional(),
      'used-each': text.optional(),
      'hands-on': text.optional(),
      'ready-in': text.optional(),
    })
    .optional(),
});
export type GuideShape = z.infer<typeof guideShape>;
/** A row of one of the lists of a guide. */
export type RowShape<K extends keyof GuideShape> =
  NonNullable<GuideShape[K]> extends readonly (infer E)[] ? E : never;

/** A use of a step that says more than a name. */
export const stepUseShape = z.strictObject({
  material: text,
  amount: open.optional(),
  pieces: texts.optional(),
});

/** Hands-on that says more than one time. */
export const handsOnShape = z.strictObject({ once: open.optional(), each: open.optional() });
/** A wait that says more than one time. */
export const waitShape = z.strictObject({
  usual: open.optional(),
  as: text.optional(),
  'if-cold': open.optional(),
  'if-damp': open.optional(),
  'if-hot': open.optional(),
});
