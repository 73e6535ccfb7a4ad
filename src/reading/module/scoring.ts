import {
  passMethods,
  type PassMark,
  type Penalty,
  type RatingScale,
  type ScoredItem,
  type Scoring,
} from '../../core/model/module.ts';
import { readCount, readRatio } from '../../core/quantity/read.ts';
import type { ModuleShape } from '../shape/module-shape.ts';
import { field, given, items, read, readEach, readNamed, type Written } from '../sheet/written.ts';
import { readClockTime } from '../values/money-and-time.ts';
import { oneOfThese, readDay, readId, readWords, readYesNo } from '../values/plain-words.ts';
import { noTime } from '../guide/times-of-step.ts';

type ScoringShape = NonNullable<ModuleShape['scoring']>;
type Row<K extends 'items' | 'ratings' | 'penalties'> = Written<NonNullable<ScoringShape[K]>[number]>;

/** How it is judged: items, ratings with their anchors, time, and how the pass mark was set. */
export function readScoring(from: Written<ScoringShape> | undefined): Scoring | undefined {
  if (!from) return undefined;
  return given<Scoring>({
    limit: read(from, 'limit', readClockTime),
    items: items(field(from, 'items')).map(readItem),
    total: read(from, 'total', readRatio),
    ratings: items(field(from, 'ratings')).map(readRating),
    penalties: items(field(from, 'penalties')).map(readPenalty),
    raterNotes: readEach(from, 'rater-notes', readWords),
    pass: readPass(field(from, 'pass')),
  });
}

function readItem(from: Row<'items'>): ScoredItem {
  return {
    id: read(from, 'id', readId) ?? '',
    says: read(from, 'says', readWords) ?? '',
    weight: read(from, 'weight', readRatio) ?? '1',
    critical: read(from, 'critical', readYesNo) ?? false,
    objectives: readEach(from, 'objectives', readId),
  };
}

function readRating(from: Row<'ratings'>): RatingScale {
  return given<RatingScale>({
    id: read(from, 'id', readId) ?? '',
    says: read(from, 'says', readWords),
    anchors: readNamed(from, 'anchors', readWords),
    objectives: readEach(from, 'objectives', readId),
  });
}

function readPenalty(from: Row<'penalties'>): Penalty {
  return given<Penalty>({
    when: read(from, 'when', readWords) ?? '',
    adds: read(from, 'adds', readClockTime) ?? noTime,
    atMost: read(from, 'at-most', readCount),
  });
}

/** Nothing where it says neither how the mark was set nor that none is. */
function readPass(from: Written<NonNullable<ScoringShape['pass']>> | undefined): Scoring['pass'] {
  if (read(from, 'none-set', readYesNo)) return 'none';
  const method = read(from, 'method', oneOfThese(passMethods));
  if (!method) return undefined;
  return given<PassMark>({
    method,
    judges: read(from, 'judges', readWords) ?? '',
    borderline: read(from, 'borderline', readRatio),
    on: read(from, 'on', readDay),
    by: read(from, 'by', readWords),
  });
}
