import type { CutLayout, CutPiece } from '../../core/plan/result.ts';
import { onceEach } from '../../core/once-each.ts';
import { type Exact, rational } from '../../core/quantity/exact.ts';

/** Sheets, rolls or lengths that are cut in one way. */
export interface CutAlike {
  /** From 1, in the order in which they are cut. */
  readonly numbers: readonly number[];
  /** The first of them, its pieces by rows from the lower left corner. */
  readonly layout: CutLayout;
  /** For each piece, the model of each of the sheets. */
  readonly models: readonly (readonly (number | undefined)[])[];
}

/** Layouts in their order, those of one geometry as one: they differ in nothing but the models. */
export function cutAlike(layouts: readonly CutLayout[]): readonly CutAlike[] {
  const groups = new Map<string, { numbers: number[]; layouts: CutLayout[] }>();
  const written = onceEach(rational);
  layouts.map(byRows).forEach((layout, i) => {
    const shape = shapeOf(layout, written);
    const group = groups.get(shape) ?? { numbers: [], layouts: [] };
    group.numbers.push(i + 1);
    group.layouts.push(layout);
    groups.set(shape, group);
  });
  return [...groups.values()].map(({ numbers, layouts: alike }) => ({
    numbers,
    layout: alike[0]!,
    models: alike[0]!.pieces.map((_, i) => alike.map(({ pieces }) => pieces[i]!.model)),
  }));
}

/** Most are one and the same number, which costs nothing to see. */
function order(a: Exact, b: Exact): number {
  return a === b ? 0 : a.compare(b);
}

function byRows(layout: CutLayout): CutLayout {
  const inOrder = (a: CutPiece, b: CutPiece): number => order(a.y, b.y) || order(a.x, b.x);
  return { ...layout, pieces: [...layout.pieces].sort(inOrder) };
}

function shapeOf(
  { pack, width, length, used, pieces }: CutLayout,
  written: (length: Exact) => string,
): string {
  const ofPieces = pieces.map(({ line, row, piece, x, y, width: across, height }) =>
    [line, row, piece, ...[x, y, across, height].map(written)].join(' '),
  );
  return [pack ?? 'stock', ...[width, length, used].map(written), ...ofPieces].join('|');
}
