import {
  materialForms,
  otherDangers,
  type Holding,
  type Material,
  type Pack,
  type Substitute,
} from '../core/model/material.ts';
import { readDensity, readHolding, readRatio, readSheets } from '../core/quantity/read.ts';
import { readDuration, readKeeping } from '../core/time/duration.ts';
import { readClockTime, readPrice } from './values/money-and-time.ts';
import {
  oneOfThese,
  readDay,
  readHazard,
  readId,
  readLink,
  readPrecaution,
  readWords,
  readYesNo,
} from './values/plain-words.ts';
import { checkShape } from './shape/check-shape.ts';
import { materialShape, type MaterialShape } from './shape/material-shape.ts';
import {
  field,
  given,
  items,
  read,
  readEach,
  readNamed,
  type OpenFile,
  type Written,
} from './sheet/written.ts';

type Item<K extends 'packs' | 'instead'> = NonNullable<MaterialShape[K]>[number];

/** What stands until a file that could not be read is set aside. */
const noHolding: Holding = { count: 1, each: { value: '1', unit: '' } };

/** A material, from `materials/<id>.yaml`. */
export function readMaterial(id: string, file: OpenFile): Material {
  const from = checkShape({ value: file.sheet.values, path: [], file }, materialShape);
  const form = read(from, 'form', oneOfThese(materialForms)) ?? 'bulk';
  const [density, keeps] = [field(from, 'density'), field(from, 'keeps')];
  return given<Material>({
    id,
    name: read(from, 'name', readWords) ?? '',
    must: readEach(from, 'must', readWords),
    form,
    packs: items(field(from, 'packs')).map((pack) => readPack(pack, form === 'sheet')),
    free: read(from, 'free', readYesNo) ?? false,
    density: density && readDensityOf(density),
    keeps: given<Material['keeps']>({
      closed: read(keeps, 'closed', readKeeping),
      opened: read(keeps, 'opened', readKeeping),
    }),
    times: readNamed(from, 'times', readClockTime),
    directions: readDirections(from),
    hazards: readEach(from, 'hazards', readHazard),
    precautions: readEach(from, 'precautions', readPrecaution),
    also: readEach(from, 'also', oneOfThese(otherDangers)),
    dataSheet: readDataSheet(from),
    notWith: readEach(from, 'not-with', readId),
    instead: items(field(from, 'instead')).map(readSubstitute),
  });
}

function readPack(from: Written<Item<'packs'>>, isSheet: boolean): Pack {
  return given<Pack>({
    holds: read(from, 'holds', isSheet ? readSheets : readHolding) ?? noHolding,
    price: read(from, 'price', readPrice),
    priced: read(from, 'priced', readDay),
    from: read(from, 'from', readId),
    code: read(from, 'code', readWords),
    link: read(from, 'link', readLink),
    arrivesIn: read(from, 'arrives-in', readDuration),
  });
}

function readDensityOf(from: Written<NonNullable<MaterialShape['density']>>): Material['density'] {
  const gramsPerMillilitre = read(from, 'is', readDensity) ?? '1';
  return given<NonNullable<Material['density']>>({
    gramsPerMillilitre,
    source: read(from, 'source', readWords),
  });
}

function readDirections(from: Written<MaterialShape>): Material['directions'] {
  const directions = field(from, 'directions');
  if (!directions) return undefined;
  return given<NonNullable<Material['directions']>>({
    says: read(directions, 'says', readWords),
    link: read(directions, 'link', readLink),
    dated: read(directions, 'dated', readDay),
  });
}

function readDataSheet(from: Written<MaterialShape>): Material['dataSheet'] {
  const sheet = field(from, 'data-sheet');
  if (!sheet) return undefined;
  return given<NonNullable<Material['dataSheet']>>({
    link: read(sheet, 'link', readLink),
    dated: read(sheet, 'dated', readDay),
  });
}

function readSubstitute(from: Written<Item<'instead'>>): Substitute {
  return given<Substitute>({
    use: read(from, 'use', readId) ?? '',
    ratio: read(from, 'ratio', readRatio) ?? '1',
    tried: read(from, 'tried', readYesNo) ?? false,
    note: read(from, 'note', readWords),
  });
}
