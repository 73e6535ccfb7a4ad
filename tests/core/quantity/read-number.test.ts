import { describe, expect, it } from 'vitest';
import type { Reading } from '../../../src/core/quantity/read.ts';
import {
  readCount,
  readDensity,
  readModels,
  readRatio,
  readShare,
  readUses,
  readYield,
} from '../../../src/core/quantity/read.ts';
import { problemOf, valueOf } from './readings.ts';

type Row = [read: (text: string) => Reading<unknown>, text: string, expected: unknown];

describe('numbers with a meaning of their own', () => {
  it.each<Row>([
    [readCount, '12', 12],
    [readCount, '0', 0],
    [readShare, '10 %', '1/10'],
    [readShare, '10%', '1/10'],
    [readShare, '10 percent', '1/10'],
    [readShare, '1/10', '1/10'],
    [readShare, '0.1', '1/10'],
    [readShare, '150 %', '3/2'],
    [readRatio, '1/4', '1/4'],
    [readRatio, '2', '2'],
    [readRatio, '25 %', '1/4'],
    [readRatio, '25 percent', '1/4'],
    [readRatio, '150 per cent', '3/2'],
    [readYield, '9 of 10', '9/10'],
    [readYield, '9 out of 10', '9/10'],
    [readYield, '9 in 10', '9/10'],
    [readYield, '90 %', '9/10'],
    [readYield, '1', '1'],
    [readUses, '300 uses', '300'],
    [readUses, '1 use', '1'],
    [readUses, '300uses', '300'],
    [readModels, '12 models', 12],
    [readModels, '1 model', 1],
    [readModels, '12models', 12],
    // 600 kg / m³ = 600 000 g / 1 000 000 mL
    [readDensity, '600 kg/m3', '3/5'],
    [readDensity, '0.6 g/mL', '3/5'],
    [readDensity, '0.6 g / mL', '3/5'],
    [readDensity, '150 g per metric cup', '3/5'],
  ])('%o reads %s', (reader, text, expected) => {
    expect(valueOf(reader(text))).toBe(expected);
  });

  it.each<Row>([
    [readCount, '2.5', 'amount-not-whole'],
    [readCount, '-1', 'amount-negative'],
    [readCount, '12 pins', 'amount-unreadable.extra'],
    [readCount, '012', 'amount-unreadable.leading-zero'],
    [readShare, '10', 'share-without-percent'],
    [readShare, '0,1', 'decimal-comma'],
    [readShare, '-1 %', 'amount-negative'],
    [readShare, '10 % of all', 'amount-unreadable.extra'],
    [readShare, '10 % to 20 %', 'amount-unreadable.extra'],
    [readRatio, '0', 'amount-zero'],
    [readYield, '11 of 10', 'share-above-one'],
    [readYield, '110 %', 'share-above-one'],
    [readYield, '11', 'share-above-one'],
    [readYield, 'about 9 of 10', 'amount-unreadable'],
    [readYield, '9 of 10 blocks', 'amount-unreadable.extra'],
    [readYield, '0 of 10', 'amount-zero'],
    [readYield, '9 of 0', 'amount-zero'],
    [readUses, 'many uses', 'amount-unreadable'],
    [readUses, '300 uses each', 'amount-unreadable.extra'],
    [readUses, 'uses 300', 'amount-unreadable.uses'],
    [readUses, '0 uses', 'amount-zero'],
    [readModels, '1.5 models', 'amount-not-whole'],
    [readModels, '0 models', 'amount-zero'],
    [readModels, 'models 12', 'amount-unreadable'],
    [readModels, '2 models each', 'amount-unreadable.extra'],
    [readDensity, '0.6', 'amount-unreadable.density'],
    [readDensity, '0.6 g/cup', 'amount-unreadable.density'],
    [readDensity, '0 g/mL', 'amount-zero'],
    [readDensity, '-1 g/mL', 'amount-negative'],
    [readDensity, '5 mL/L', 'amount-unreadable.density'],
    [readDensity, '0.6 g/mL of powder', 'amount-unreadable.density'],
  ])('%o refuses %s', (reader, text, code) => {
    expect(problemOf(reader(text))[0]).toBe(code);
  });

  it('says which words are one too many', () => {
    expect(problemOf(readCount('12 pins'))[1]).toEqual({ amount: '12', extra: 'pins' });
  });

  it('asks whether 10 means 10 %', () => {
    expect(problemOf(readShare('10'))).toEqual(['share-without-percent', { percent: '10 %' }]);
  });
});
