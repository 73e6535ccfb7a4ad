import type { PieceKind, Placement } from '../../../../src/core/solve/cutting/pieces.ts';

interface Laid {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export function laid(pieces: readonly PieceKind[], { piece, x, y, turned }: Placement): Laid {
  const { width, height } = pieces[piece]!;
  return turned ? { x, y, width: height, height: width } : { x, y, width, height };
}

/** Pairs of pieces that overlap, or lie nearer to each other than the gap: slow and simple. */
export function tooNear(
  pieces: readonly PieceKind[],
  placements: readonly Placement[],
  gap: number,
): string[] {
  const all = placements.map((placement) => laid(pieces, placement));
  return all.flatMap((a, i) =>
    all.slice(i + 1).flatMap((b, j) => (isTooNear(a, b, gap) ? [`${i} and ${i + 1 + j}`] : [])),
  );
}

function isTooNear(a: Laid, b: Laid, gap: number): boolean {
  const apart =
    a.x + a.width + gap <= b.x ||
    b.x + b.width + gap <= a.x ||
    a.y + a.height + gap <= b.y ||
    b.y + b.height + gap <= a.y;
  return !apart;
}
