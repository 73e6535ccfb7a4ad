import { bestPattern } from './best-pattern.ts';
import type { Layout } from './lay-out.ts';
import type { Blank, PieceKind } from './pieces.ts';

/** Blanks laid along a rod so that it is as full as can be. */
export function layAlong(order: readonly Blank[], _width: number, length: number): Layout {
  const kinds = [...new Map(order.map((blank) => [blank.kind, blank])).values()];
  const counts = new Map<number, number>();
  for (const { kind } of order) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  const pattern = bestPattern(
    kinds.map(({ kind, height }) => ({ length: height, worth: height, count: counts.get(kind)! })),
    length,
  );
  const over = new Map(kinds.map(({ kind }, at) => [kind, pattern[at]!]));
  const left = order.filter(({ kind }) => {
    const still = over.get(kind)!;
    over.set(kind, still - 1);
    return still <= 0;
  });
  return { ...along(kinds, pattern), left };
}

/** The pieces of a pattern, end to end. */
export function along(
  kinds: readonly (Pick<PieceKind, 'height'> & { readonly kind: number })[],
  pattern: readonly number[],
): Layout {
  let top = 0;
  const placements = kinds.flatMap(({ kind, height }, at) =>
    Array.from({ length: pattern[at]! }, () => {
      const y = top;
      top += height;
      return { piece: kind, x: 0, y, turned: false };
    }),
  );
  return { placements, left: [], top };
}
