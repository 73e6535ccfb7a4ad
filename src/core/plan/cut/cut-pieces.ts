import type { Material } from '../../model/material.ts';
import type { Workspace } from '../../model/workspace.ts';
import { type Exact, zero } from '../../quantity/exact.ts';
import { convert, measure } from '../../quantity/quantity.ts';
import type { Line } from '../demand/line.ts';
import { isGuideUse } from '../../model/guide-use.ts';
import type { CutPiece, CuttingPlan } from '../result.ts';
import { modelsServed } from '../scale/runs.ts';
import { portionsFor, withExtras } from '../scale/scale.ts';
import type { RowAt } from '../scale/step-uses.ts';

/** All pieces that the lines of a plan cut from one material. */
export interface ToCut {
  readonly by: CuttingPlan['by'];
  /** Between pieces, in mm: the largest that any row asks for. */
  readonly gap: Exact;
  readonly kinds: readonly PieceKind[];
}

/** Pieces of one size, whatever row they are for. */
export interface PieceKind {
  /** Width and height, or the one length; in mm. */
  readonly sides: readonly Exact[];
  readonly turn: boolean;
  /** What each of them is for, in the order in which they are cut. */
  readonly for: readonly PieceFor[];
}
export type PieceFor = Pick<CutPiece, 'line' | 'row' | 'piece' | 'model'>;

/**
 * What is cut from each material. Pieces of one size are alike, so that those of several rows and guides share a
 * sheet.
 */
export function piecesToCut(lines: readonly CutLine[], { materials }: Workspace): ReadonlyMap<string, ToCut> {
  const rows = lines.flatMap((line, index) => rowsCut(line, index));
  const names = [...new Set(rows.map(({ row }) => row.use))];
  const all = names.map((id): [string, ToCut] => {
    const own = rows.filter(({ row }) => row.use === id);
    return [id, toCut(own, materials[id]!)];
  });
  return new Map(all.filter(([, { kinds }]) => kinds.length > 0));
}

interface RowCut {
  readonly row: RowAt;
  readonly kinds: readonly PieceKind[];
}

type CutLine = Pick<Line, 'at' | 'made' | 'needs'>;

function rowsCut(line: CutLine, index: number): readonly RowCut[] {
  return line.at.materials.flatMap((row, i) =>
    row.pieces.length === 0 || isGuideUse(row.use)
      ? []
      : [{ row, kinds: row.pieces.map((piece) => kindOf(piece, line, { line: index, row: i })) }],
  );
}

function kindOf(piece: RowAt['pieces'][number], line: CutLine, own: Omit<PieceFor, 'piece'>): PieceKind {
  const { id, size, turn } = piece;
  const models = modelsOf(piece, line, own.row);
  const all = line.needs.rows[own.row]!.pieces.find((need) => need.piece === id)!.count;
  const extra: PieceFor = { line: own.line, row: own.row, piece: id };
  const targets = Array.from({ length: all }, (_, n): PieceFor => {
    const model = models[n];
    return model === undefined ? extra : { line: own.line, row: own.row, piece: id, model };
  });
  return { sides: size.sides.map((side) => convert(measure(side), 'mm').value), turn, for: targets };
}

/**
 * The model that each piece is for, the first of several; what is cut beyond these is extra. Models that have their
 * pieces already are the first ones.
 *
 *     2 a model, 4 models, 20 % waste: 10 pieces   ->   1 1 2 2 3 3 4 4, and 2 extra
 */
function modelsOf(piece: RowAt['pieces'][number], { at, made, needs }: CutLine, index: number): number[] {
  const row = at.materials[index]!;
  const { count } = needs.rows[index]!.pieces.find((need) => need.piece === piece.id)!;
  const served = row.does ?? modelsServed(at, row.for, made);
  const portions = portionsFor(at, row, made, made);
  let left = portions;
  while (left > 0 && withExtras(piece.count * left, row) > count) left--;
  return Array.from(
    { length: left * piece.count },
    (_, n) => (portions - left + Math.floor(n / piece.count)) * served + 1,
  );
}

function toCut(rows: readonly RowCut[], { form }: Material): ToCut {
  const kinds = rows.flatMap((row) => row.kinds).filter((kind) => kind.for.length > 0);
  const gaps = rows.flatMap(({ row: { gap } }) => (gap ? [convert(measure(gap), 'mm').value] : []));
  const isLength = kinds[0]?.sides.length === 1;
  return {
    by: isLength ? 'lengths' : form === 'roll' ? 'roll' : 'sheets',
    gap: gaps.reduce((most, gap) => (gap.compare(most) > 0 ? gap : most), zero),
    kinds: joined(kinds),
  };
}

/** Those of one size together, in the order of their models, so that the first models have their pieces first. */
function joined(kinds: readonly PieceKind[]): readonly PieceKind[] {
  const bySize = new Map<string, PieceKind[]>();
  for (const kind of kinds) {
    const key = [...kind.sides.map((side) => side.toFraction()), kind.turn].join();
    bySize.set(key, [...(bySize.get(key) ?? []), kind]);
  }
  return [...bySize.values()].map((alike) => ({ ...alike[0]!, for: alike.flatMap((kind) => kind.for) }));
}
