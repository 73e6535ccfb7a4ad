import { signals, type Caution, type QualityCheck } from '../../core/model/guide.ts';
import { oneOf, oneOfThese, readId, readWords } from '../values/plain-words.ts';
import type { RowShape } from '../shape/guide-shape.ts';
import { field, given, read, readEach, refuse, type Written } from '../sheet/written.ts';
import type { GuideNames } from './names.ts';
import { readOnly } from './rows.ts';
import { variedTarget, variedText } from './varied-amounts.ts';

export function readQualityCheck(from: Written<RowShape<'checks'>>, { levels }: GuideNames): QualityCheck {
  const asks = ['measure', 'ask'].filter((key) => field(from, key as 'measure' | 'ask'));
  if (asks.length === 0) refuse(from, { code: 'missing-key', variant: 'ask', facts: { key: 'ask' } });
  return given<QualityCheck>({
    id: read(from, 'id', readId) ?? '',
    measure: read(from, 'measure', readWords),
    target: variedTarget(field(from, 'target'), levels),
    ask: read(from, 'ask', readWords),
    like: read(from, 'like', readWords),
    unlike: read(from, 'unlike', readWords),
    after: read(from, 'after', readId),
    each: read(from, 'each', readEachOf) ?? 'model',
    by: read(from, 'by', readWords),
    ifNot: variedText(field(from, 'if-not'), levels, readWords),
    only: readOnly(from),
  });
}

const readEachOf = oneOf<QualityCheck['each']>(
  { model: 'model', run: 'run', batch: 'batch', 'the batch': 'batch' },
  ['model', 'run', 'batch'],
);

export function readCaution(from: Written<RowShape<'cautions'>>): Caution {
  return given<Caution>({
    id: read(from, 'id', readId) ?? '',
    signal: read(from, 'signal', oneOfThese(signals)) ?? 'danger',
    steps: readEach(from, 'steps', readId),
    hazard: read(from, 'hazard', readWords) ?? '',
    harm: read(from, 'harm', readWords),
    avoid: readEach(from, 'avoid', readWords),
    only: readOnly(from),
  });
}
