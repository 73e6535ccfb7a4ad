import { guideUsed, isGuideUse } from '../../core/model/guide-use.ts';
import type { Ingredient, MaterialRow, Mix, Pattern, Piece, ToolRow } from '../../core/model/guide.ts';
import type { Amount, Quantity, Rational, Size, Varied } from '../../core/model/values.ts';
import { exact } from '../../core/quantity/exact.ts';
import { readCount, readModels, readQuantity, readShare } from '../../core/quantity/read.ts';
import { readId, readWords, readYesNo, wrong } from '../values/plain-words.ts';
import type { RowShape } from '../shape/guide-shape.ts';
import {
  field,
  given,
  items,
  read,
  readEach,
  refuse,
  type TextReader,
  type Written,
} from '../sheet/written.ts';
import { basisReader } from './basis.ts';
import type { GuideNames } from './names.ts';
import { variedAmount, variedCount, variedSize, variedText } from './varied-amounts.ts';

/** What stands until a guide that could not be read is set aside. */
const noQuantity: Quantity = { value: '0', unit: '' };
const noAmount: Amount = { least: '0', usual: '0', most: '0', unit: '' };
const noSize: Size = { sides: [] };

export function readMix(from: Written<RowShape<'mixes'>>, names: GuideNames): Mix {
  return given<Mix>({
    id: read(from, 'id', readId) ?? '',
    name: read(from, 'name', readWords),
    makes: variedText(field(from, 'makes'), names.levels, readQuantity) ?? noQuantity,
    leftBehind: read(from, 'left-behind', readLeftBehind) ?? '0',
    of: items(field(from, 'of')).map((one) => readIngredient(one, names)),
    only: readOnly(from),
  });
}

/** What stays in the pot is less than all of it. */
const readLeftBehind: TextReader<Rational> = (text) => {
  const share = readShare(text);
  return share.ok && exact(share.value).compare(1) >= 0 ? wrong('share-above-one', {}, 'left-behind') : share;
};

function readIngredient(from: Written<RowShape<'mixes'>['of'][number]>, names: GuideNames): Ingredient {
  return given<Ingredient>({
    use: read(from, 'use', readId) ?? '',
    amount: variedAmount(from, names.levels) ?? noAmount,
    until: read(from, 'until', readWords),
  });
}

export function readMaterialRow(from: Written<RowShape<'materials'>>, names: GuideNames): MaterialRow {
  const use = read(from, 'use', readUse) ?? '';
  const id = read(from, 'id', readId) ?? use;
  return given<MaterialRow>({
    id,
    use,
    amount: readRowAmount(from, names),
    pieces: readPieces(from, id, names),
    gap: read(from, 'gap', readQuantity),
    waste: read(from, 'waste', readShare) ?? '0',
    for: read(from, 'for', basisReader(names)) ?? { per: 'model' },
    does: read(from, 'does', readModels),
    only: readOnly(from),
  });
}

/** A material, a mix, or `guide:ID`: the model of another guide. */
export function readUse(text: string) {
  return isGuideUse(text) ? readGuideUse(text) : readId(text);
}
function readGuideUse(text: string) {
  const id = readId(guideUsed(text));
  return id.ok ? { ...id, value: text } : id;
}

/** A row says how much in one way: an amount, a count, a length, or pieces. */
function readRowAmount(from: Written<RowShape<'materials'>>, names: GuideNames): Varied<Amount> | undefined {
  const ways = (['amount', 'count', 'length', 'pieces'] as const).filter((key) => field(from, key));
  if (ways.length === 0)
    return refuse(from, { code: 'missing-key', variant: 'amount', facts: { key: 'amount' } });
  if (ways.length > 1)
    return refuse(field(from, ways[1]!)!, {
      code: 'amount-twice',
      facts: { first: ways[0]!, second: ways[1]! },
    });
  if (ways[0] === 'count') return variedAmount(as(from, 'count'), names.levels);
  return ways[0] === 'amount' ? variedAmount(from, names.levels) : undefined;
}

/** A row whose amount stands under another key, read like any other. */
function as(from: Written<RowShape<'materials'>>, key: 'count') {
  return { ...from, value: { amount: from.value[key] } };
}

function readPieces(from: Written<RowShape<'materials'>>, row: string, names: GuideNames): readonly Piece[] {
  const length = field(from, 'length');
  if (!length) return items(field(from, 'pieces')).map((piece) => readPiece(piece, names));
  return [{ id: row, size: variedSize(length, names.levels) ?? noSize, count: 1, turn: true }];
}

type PieceShape = NonNullable<RowShape<'materials'>['pieces']>[number];

function readPiece(from: Written<PieceShape>, names: GuideNames): Piece {
  const size = field(from, 'size') ?? field(from, 'length');
  if (!size) refuse(from, { code: 'missing-key', variant: 'size', facts: { key: 'size' } });
  return given<Piece>({
    id: read(from, 'id', readId) ?? '',
    size: variedSize(size, names.levels) ?? noSize,
    count: variedCount(field(from, 'count'), names.levels) ?? 1,
    turn: read(from, 'turn', readYesNo) ?? true,
    pattern: read(from, 'pattern', readId),
  });
}

export function readPattern(from: Written<RowShape<'patterns'>>): Pattern {
  return given<Pattern>({
    id: read(from, 'id', readId) ?? '',
    file: read(from, 'file', readWords) ?? '',
    on: read(from, 'on', readId),
    does: read(from, 'does', readModels),
  });
}

export function readToolRow(from: Written<RowShape<'tools'>>): ToolRow {
  const held = field(from, 'held');
  return given<ToolRow>({
    use: read(from, 'use', readId) ?? '',
    count: read(from, 'count', readCount) ?? 1,
    holds: read(from, 'holds', readModels) ?? 1,
    held: held && { from: read(held, 'from', readId) ?? '', to: read(held, 'to', readId) ?? '' },
    in: readEach(from, 'in', readId),
    only: readOnly(from),
  });
}

/** The levels that have a row; all of them where left out. */
export function readOnly(
  from: Written<{ readonly only?: readonly string[] | undefined }>,
): readonly string[] | undefined {
  return field(from, 'only') ? readEach(from, 'only', readId) : undefined;
}
