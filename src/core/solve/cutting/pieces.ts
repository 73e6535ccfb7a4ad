/** So many like rectangles to cut. All sizes are whole numbers of one unit. */
export interface PieceKind {
  readonly width: number;
  readonly height: number;
  readonly count: number;
  /** Whether it may be turned by 90°: no where the grain or the print has a direction. */
  readonly turn: boolean;
}

/** Where one piece lies: its lower left corner. `piece` is the index of its kind. */
export interface Placement {
  readonly piece: number;
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
}

/** A single piece. `turned`: its sides are already swapped. */
export interface Blank {
  readonly kind: number;
  readonly width: number;
  readonly height: number;
  /** Whether the layout may still choose how it lies. */
  readonly turn: boolean;
  readonly turned: boolean;
}

/** The same blank, lying the other way, with no choice left. */
export function turnedBlank({ kind, width, height, turned }: Blank): Blank {
  return { kind, width: height, height: width, turn: false, turned: !turned };
}

/**
 * The pieces grown by the gap to their right and above. A sheet grown by the same gap then holds exactly what it held
 * with gaps between the pieces and none at its edges.
 */
export function grown(pieces: readonly PieceKind[], gap: number): PieceKind[] {
  return pieces.map(({ width, height, count, turn }) => ({
    width: width + gap,
    height: height + gap,
    count,
    turn: turn && width !== height,
  }));
}

/** Every single piece. */
export function blanksOf(pieces: readonly PieceKind[]): Blank[] {
  return pieces.flatMap(({ width, height, count, turn }, kind) =>
    Array.from({ length: count }, () => ({ kind, width, height, turn, turned: false })),
  );
}

/** Total area of blanks, sheets or whatever has sides. */
export function areaOf(sizes: readonly { readonly width: number; readonly height: number }[]): number {
  return sizes.reduce((sum, { width, height }) => sum + width * height, 0);
}
