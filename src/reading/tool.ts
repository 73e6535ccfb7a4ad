import { otherDangers } from '../core/model/material.ts';
import type { Tool } from '../core/model/tool.ts';
import { readQuantity, readUses } from '../core/quantity/read.ts';
import { readPrice } from './values/money-and-time.ts';
import { oneOfThese, readDay, readWords } from './values/plain-words.ts';
import { checkShape } from './shape/check-shape.ts';
import { toolShape } from './shape/tool-shape.ts';
import { given, read, readEach, type OpenFile } from './sheet/written.ts';

/** A tool, from `tools/<id>.yaml`. */
export function readTool(id: string, file: OpenFile): Tool {
  const from = checkShape({ value: file.sheet.values, path: [], file }, toolShape);
  return given<Tool>({
    id,
    name: read(from, 'name', readWords) ?? '',
    price: read(from, 'price', readPrice),
    priced: read(from, 'priced', readDay),
    lasts: read(from, 'lasts', readUses),
    reads: read(from, 'reads', readQuantity),
    also: readEach(from, 'also', oneOfThese(otherDangers)),
  });
}
