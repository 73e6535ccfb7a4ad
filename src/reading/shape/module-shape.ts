import { z } from 'zod';
import { namedTexts, spoken, text, texts } from './kinds.ts';
import { reviewedShape } from './reviewed-shape.ts';

const objective = z.strictObject({
  id: text,
  does: text,
  standard: text.optional(),
  'shown-by': text.optional(),
  by: text.optional(),
  'practised-at': texts.optional(),
  'assessed-by': texts.optional(),
});

const preparation = z.strictObject({
  read: text.optional(),
  watch: text.optional(),
  do: text.optional(),
  takes: text.optional(),
  text: text.optional(),
});

const people = z.strictObject({ id: text, count: text, as: texts.optional() });
const cohort = z.strictObject({
  ratio: text.optional(),
  group: text.optional(),
  people: z.array(people).register(spoken, { of: 'people' }),
  instructors: text.optional(),
});

const agendaItem = z.strictObject({
  id: text,
  what: text.optional(),
  takes: text.optional(),
  stations: texts.optional(),
  survey: text.optional(),
  script: texts.optional(),
});

const modelsAtStation = z.strictObject({
  guide: text,
  level: text.optional(),
  version: text.optional(),
  uses: text.optional(),
  share: text.optional(),
  besides: z
    .strictObject({
      demonstration: text.optional(),
      pilot: text.optional(),
      assessment: text.optional(),
    })
    .optional(),
});
const toolAtStation = z.strictObject({ use: text, count: text.optional(), each: text.optional() });
const station = z.strictObject({
  id: text,
  name: text.optional(),
  seats: text.optional(),
  'at-one': text.optional(),
  takes: text,
  'change-over': text.optional(),
  practice: text.optional(),
  reset: text.optional(),
  led: text.optional(),
  models: z.array(modelsAtStation).optional(),
  tools: z.array(toolAtStation).optional(),
  meanwhile: texts.optional(),
});

const scoring = z.strictObject({
  limit: text.optional(),
  total: text.optional(),
  items: z
    .array(
      z.strictObject({
        id: text,
        says: text,
        weight: text.optional(),
        critical: text.optional(),
        objectives: texts.optional(),
      }),
    )
    .optional(),
  ratings: z
    .array(
      z.strictObject({
        id: text,
        says: text.optional(),
        anchors: namedTexts.optional(),
        objectives: texts.optional(),
      }),
    )
    .optional(),
  penalties: z.array(z.strictObject({ when: text, adds: text, 'at-most': text.optional() })).optional(),
  'rater-notes': texts.optional(),
  pass: z
    .strictObject({
      'none-set': text.optional(),
      method: text.optional(),
      judges: text.optional(),
      borderline: text.optional(),
      on: text.optional(),
      by: text.optional(),
    })
    .register(spoken, { of: 'pass' })
    .optional(),
});

const surveyItem = z.strictObject({
  id: text,
  ask: text,
  scale: namedTexts.optional(),
  asked: texts.optional(),
  of: texts.optional(),
});

const question = z.strictObject({
  id: text.optional(),
  ask: text,
  choices: texts,
  right: text,
  because: text,
  objectives: texts.optional(),
});

/** The keys of the front matter of `modules/<id>/module.md`. */
export const moduleShape = z.strictObject({
  ...reviewedShape.shape,
  audience: text.optional(),
  after: texts.optional(),
  needs: texts.optional(),
  objectives: z.array(objective),
  activities: z.array(z.strictObject({ id: text, what: text })).optional(),
  prepare: z.array(preparation).optional(),
  promised: text.optional(),
  bring: texts.optional(),
  wear: texts.optional(),
  notices: z
    .strictObject({
      accommodations: text.optional(),
      recording: text.optional(),
      privacy: text.optional(),
    })
    .optional(),
  cohort,
  session: z.strictObject({ booked: text, where: text.optional(), agenda: z.array(agendaItem) }).optional(),
  stations: z.array(station).optional(),
  scoring: scoring.optional(),
  surveys: z.strictObject({ items: z.array(surveyItem) }).optional(),
  'self-check': z.array(question).optional(),
  debrief: texts.optional(),
  pilot: text.optional(),
});
export type ModuleShape = z.infer<typeof moduleShape>;
