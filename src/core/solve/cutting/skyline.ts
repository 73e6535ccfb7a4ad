/**
 * The upper edge of what is laid so far: flat stretches from left to right.
 *
 *     ┌───┐
 *     │   │    ┌──┐        each stretch is the top of a piece, or the bottom of the sheet
 *     │   └────┘  └──
 *     └──────────────
 */
export interface Skyline {
  readonly stretches: Stretch[];
  /** Of the sheet; Infinity for a strip. */
  readonly height: number;
}
interface Stretch {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** The lowest stretch, and how high the edge stands above it on either side. */
export interface Gap extends Stretch {
  readonly at: number;
  readonly leftWall: number;
  readonly rightWall: number;
}

export function emptySkyline(width: number, height: number): Skyline {
  return { stretches: [{ x: 0, y: 0, width }], height };
}

/** The lowest stretch, the leftmost of several; none where the sheet is full to its edge. */
export function lowestGap({ stretches, height }: Skyline): Gap | undefined {
  let at = 0;
  for (let other = 1; other < stretches.length; other++)
    if (stretches[other]!.y < stretches[at]!.y) at = other;
  const { x, y, width } = stretches[at]!;
  if (y >= height) return undefined;
  const leftWall = (at > 0 ? stretches[at - 1]!.y : height) - y;
  const rightWall = (at + 1 < stretches.length ? stretches[at + 1]!.y : height) - y;
  return { x, y, width, at, leftWall, rightWall };
}

/** Lays a piece of this width and height on a stretch, at its left or right end. */
export function layAt({ stretches }: Skyline, at: number, x: number, width: number, height: number): void {
  const below = stretches[at]!;
  const laid = { x, y: below.y + height, width };
  if (width < below.width) {
    const beside = { x: x > below.x ? below.x : x + width, y: below.y, width: below.width - width };
    stretches.splice(at, 1, ...(x > below.x ? [beside, laid] : [laid, beside]));
  } else stretches[at] = laid;
  joinAround(stretches, at, 2);
}

/** Raises a gap that nothing fits to its lower wall. False where there is none: the rest of a sheet is of no use. */
export function levelUp({ stretches }: Skyline, { at, x, y, width, leftWall, rightWall }: Gap): boolean {
  if (stretches.length === 1) return false;
  stretches[at] = { x, y: y + Math.min(leftWall, rightWall), width };
  joinAround(stretches, at, 1);
  return true;
}

function joinAround(stretches: Stretch[], at: number, count: number): void {
  for (let left = Math.min(at + count, stretches.length) - 1; left >= Math.max(0, at - 1); left--) {
    const [a, b] = [stretches[left], stretches[left + 1]];
    if (a && b && a.y === b.y) stretches.splice(left, 2, { x: a.x, y: a.y, width: a.width + b.width });
  }
}
