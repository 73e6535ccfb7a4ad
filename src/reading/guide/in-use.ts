import type { InUse, InUsePart, UsedInUse } from '../../core/model/guide.ts';
import { readAmount, readCount, readQuantity, readSize } from '../../core/quantity/read.ts';
import { readClockTime } from '../values/money-and-time.ts';
import { readId, readWords, readYesNo } from '../values/plain-words.ts';
import type { GuideShape } from '../shape/guide-shape.ts';
import { field, given, items, read, readEach, type Written } from '../sheet/written.ts';

type InUseShape = NonNullable<GuideShape['in-use']>;
type From = Written<InUseShape> | undefined;
type Renewal = InUse['renew'][number];

/** The life of a model after the build. */
export function readInUse(from: From): InUse {
  return given<InUse>({
    setUp: readPart(from, 'set-up'),
    between: readPart(from, 'between'),
    after: readPart(from, 'after'),
    renew: items(field(from, 'renew')).map(readRenewal),
    dispose: readDispose(from),
    store: readStore(from),
    carry: readCarry(from),
  });
}

function readPart(from: From, key: 'set-up' | 'between' | 'after'): InUsePart | undefined {
  const part = field(from, key);
  if (!part) return undefined;
  return given<InUsePart>({
    takes: read(part, 'takes', readClockTime),
    do: read(part, 'do', readWords),
    uses: items(field(part, 'uses')).map(readUsed),
  });
}

function readUsed(from: Written<{ readonly material: string; readonly amount: string }>): UsedInUse {
  return {
    material: read(from, 'material', readId) ?? '',
    amount: read(from, 'amount', (text) => readAmount(text)) ?? {
      least: '0',
      usual: '0',
      most: '0',
      unit: '',
    },
  };
}

function readRenewal(from: Written<NonNullable<InUseShape['renew']>[number]>): Renewal {
  return given<Renewal>({
    id: read(from, 'id', readId) ?? '',
    times: read(from, 'times', readCount),
    steps: readEach(from, 'steps', readId),
    materials: items(field(from, 'materials')).map(readUsed),
  });
}

function readDispose(from: From): InUse['dispose'] {
  const dispose = field(from, 'dispose');
  if (!dispose) return undefined;
  return given<NonNullable<InUse['dispose']>>({
    to: read(dispose, 'to', readWords),
    not: read(dispose, 'not', readWords),
  });
}

function readStore(from: From): InUse['store'] {
  const store = field(from, 'store');
  if (!store) return undefined;
  return given<NonNullable<InUse['store']>>({
    apart: read(store, 'apart', readYesNo),
    how: read(store, 'how', readWords),
  });
}

function readCarry(from: From): InUse['carry'] {
  const carry = field(from, 'carry');
  if (!carry) return undefined;
  return given<NonNullable<InUse['carry']>>({
    size: read(carry, 'size', readSize),
    weight: read(carry, 'weight', readQuantity),
    how: read(carry, 'how', readWords),
  });
}
