import type { PieceKind } from './pieces.ts';
import type { Size } from './stock.ts';

/** Sizes measured in another way: whatever lies side by side within the whole still does. */
interface Scale {
  readonly of: (size: number) => number;
  readonly whole: number;
}

/**
 * Fewer sheets of this size cannot hold the pieces: by area, by area in other measures of width and height that count
 * the large for more, and by pieces of which no two share a sheet.
 *
 * @source Dual feasible functions: Fekete and Schepers (2004), Math Methods Oper Res 60:311–329; their count of parts
 *         as sharpened by Carlier, Clautiaux and Moukrim (2007), Comput Oper Res 34:2223–2250; large pieces: Martello and
 *         Vigo (1998), Manage Sci 44:388–399. From memory.
 */
export function sheetsAtLeast(pieces: readonly PieceKind[], sheet: Size): number {
  const sizes = pieces.flatMap(({ width, height, turn }) => (turn ? [width, height] : [width]));
  const others = pieces.flatMap(({ width, height, turn }) => (turn ? [width, height] : [height]));
  const heights = scales(others, sheet.height);
  const byArea = scales(sizes, sheet.width).flatMap((across) =>
    heights.map((along) => {
      const area = pieces.reduce(
        (sum, piece) => sum + piece.count * scaledArea(piece, sheet, across, along),
        0,
      );
      return Math.ceil(area / (across.whole * along.whole));
    }),
  );
  return Math.max(apart(pieces, sheet), ...byArea);
}

/** The lesser of the two ways to lie, where it fits both ways. */
function scaledArea({ width, height, turn }: PieceKind, sheet: Size, across: Scale, along: Scale): number {
  const upright =
    width <= sheet.width && height <= sheet.height ? across.of(width) * along.of(height) : Infinity;
  if (!turn || height > sheet.width || width > sheet.height) return upright;
  return Math.min(upright, across.of(height) * along.of(width));
}

/** At most so many sizes are tried as the edge between small and large: work, not a limit of truth. */
const most = 12;

function scales(sizes: readonly number[], whole: number): Scale[] {
  const small = [...new Set(sizes)].filter((size) => 2 * size <= whole).sort((a, b) => a - b);
  const every = Math.ceil(small.length / most);
  const edges = small.filter((_, at) => at % every === 0);
  return [
    { of: (size) => size, whole },
    ...[...edges, whole / 2].map((edge) => withoutSmall(edge, whole)),
    ...edges.map((part) => inParts(part, whole)),
  ];
}

/** What leaves room only for small pieces counts whole, and the small count nothing. */
function withoutSmall(edge: number, whole: number): Scale {
  return { of: (size) => (size > whole - edge ? whole : size < edge ? 0 : size), whole };
}

/** Twice how many parts fit beside each other: the small by what they fill, the large by what they leave. */
function inParts(part: number, whole: number): Scale {
  const parts = (size: number): number => Math.floor(size / part);
  const all = parts(whole);
  const of = (size: number): number =>
    2 * size > whole ? 2 * (all - parts(whole - size)) : 2 * size === whole ? all : 2 * parts(size);
  return { of, whole: 2 * all };
}

/** Pieces, the largest first, of which no two fit one sheet. */
function apart(pieces: readonly PieceKind[], sheet: Size): number {
  const alone: PieceKind[] = [];
  const bySize = [...pieces].sort((a, b) => b.width * b.height - a.width * a.height);
  let count = 0;
  for (const piece of bySize) {
    if (alone.some((other) => besides(piece, other, sheet))) continue;
    const many = besides(piece, piece, sheet) ? 1 : piece.count;
    if (piece.count > 0) alone.push(piece);
    count += Math.min(many, piece.count);
  }
  return count;
}

function besides(a: PieceKind, b: PieceKind, sheet: Size): boolean {
  return ways(a).some(([aWidth, aHeight]) =>
    ways(b).some(
      ([bWidth, bHeight]) =>
        (aWidth + bWidth <= sheet.width && Math.max(aHeight, bHeight) <= sheet.height) ||
        (aHeight + bHeight <= sheet.height && Math.max(aWidth, bWidth) <= sheet.width),
    ),
  );
}

function ways({ width, height, turn }: PieceKind): [number, number][] {
  return turn
    ? [
        [width, height],
        [height, width],
      ]
    : [[width, height]];
}
