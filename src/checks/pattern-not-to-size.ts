import { type DrawingMeasure, drawingMeasure } from '../core/quantity/drawing-measure.ts';
import { exactText } from '../core/quantity/exact.ts';
import { compare, convert, measure } from '../core/quantity/quantity.ts';
import type { Check, Finding } from './check.ts';
import type { Context, GuideAtLevel } from './lookup/context.ts';
import { the } from './lookup/unknown-names.ts';

/** A drawing that pieces are cut by, and that would not be printed as large as they are. */
export const patternNotToSize: Check = {
  code: 'pattern-not-to-size',
  gravity: 'incomplete',
  find: (context) => context.guidesAt.flatMap((read) => cutByDrawings(read, context)),
};

function cutByDrawings(read: GuideAtLevel, context: Context): readonly Finding[] {
  return read.at.materials.flatMap(({ pieces }, row) =>
    pieces.flatMap((piece, i) => {
      const index = read.at.patterns.findIndex(({ id }) => id === piece.pattern);
      const pattern = read.at.patterns[index];
      const bytes = pattern && context.bytesIn(`guides/${read.guide.id}`, pattern.file);
      if (!pattern || !bytes) return [];
      const places = [
        read.place('patterns', index, 'file'),
        read.place('materials', row, 'pieces', i, 'size'),
      ] as const;
      const who = the('pattern', pattern.id);
      const facts = { who, file: pattern.file, piece: piece.id, ...sidesOf(piece) };
      return compared(
        piece,
        drawingMeasure(new TextDecoder().decode(bytes.subarray(0, 4096))),
        places,
        facts,
      );
    }),
  );
}

type PieceAt = GuideAtLevel['at']['materials'][number]['pieces'][number];

/** A piece with one side has no outline to compare. */
function compared(
  piece: PieceAt,
  drawing: DrawingMeasure | undefined,
  places: Finding['places'],
  facts: Finding['facts'],
): readonly Finding[] {
  const [width, height] = piece.size.sides.map(measure);
  if (!width || !height) return [];
  if (!drawing) return [{ variant: 'no-size', places, facts }];
  const drawn = { drawnWidth: exactText(drawing.width), drawnHeight: exactText(drawing.height) };
  if (!drawing.isEven) return [{ variant: 'stretched', places, facts: { ...facts, ...drawn } }];
  const isAsLarge =
    compare(width, { value: drawing.width, unit: 'mm' }) === 0 &&
    compare(height, { value: drawing.height, unit: 'mm' }) === 0;
  return isAsLarge ? [] : [{ places, facts: { ...facts, ...drawn } }];
}

function sidesOf({ size }: PieceAt): Readonly<Record<'width' | 'height', string>> {
  const [width = '', height = ''] = size.sides.map((side) => exactText(convert(measure(side), 'mm').value));
  return { width, height };
}
