import { turnedBlank, type Blank, type Placement } from './pieces.ts';
import { emptySkyline, layAt, levelUp, lowestGap, type Gap } from './skyline.ts';

/** What lies on one sheet or strip, and which blanks found no room. */
export interface Layout {
  readonly placements: readonly Placement[];
  readonly left: readonly Blank[];
  /** Height of what is laid. */
  readonly top: number;
}

/** Blanks that follow each other in the order and are all alike: one look does for all of them. */
interface Pile {
  readonly blank: Blank;
  count: number;
}

interface Choice {
  /** Index into the piles still to be laid. */
  readonly at: number;
  /** Whether the blank is laid the other way than it is listed. */
  readonly across: boolean;
}

/**
 * Blanks laid so that each fills the lowest gap well: of those that fit there, the one that fits best; among equals
 * the first in the order. A gap that nothing fits is levelled up to its lower wall.
 *
 * @param height  Of a sheet: blanks for which no gap below it is left stay over.
 * @source Best fit into the lowest gap: Burke, Kendall and Whitwell (2004), Operations Research 52:655–671; the
 *         fitness of a gap with two walls: Leung, Zhang and Sim (2011), Eur J Oper Res 215:57–69. From memory.
 */
export function layOut(order: readonly Blank[], width: number, height = Infinity): Layout {
  const skyline = emptySkyline(width, height);
  const piles = inPiles(order);
  const placements: Placement[] = [];
  const narrowest = Math.min(...order.map(narrowestSide));
  let top = 0;
  for (let gap = lowestGap(skyline); gap && piles.length > 0; gap = lowestGap(skyline)) {
    const choice = gap.width < narrowest ? undefined : bestFit(piles, gap, height - gap.y);
    if (!choice) {
      if (!levelUp(skyline, gap)) break;
      continue;
    }
    const pile = piles[choice.at]!;
    const blank = choice.across ? turnedBlank(pile.blank) : pile.blank;
    const x = gap.leftWall >= gap.rightWall ? gap.x : gap.x + gap.width - blank.width;
    layAt(skyline, gap.at, x, blank.width, blank.height);
    placements.push({ piece: blank.kind, x, y: gap.y, turned: blank.turned });
    top = Math.max(top, gap.y + blank.height);
    if (--pile.count === 0) piles.splice(choice.at, 1);
  }
  const left = piles.flatMap(({ blank, count }) => Array<Blank>(count).fill(blank));
  return { placements, left, top };
}

function inPiles(order: readonly Blank[]): Pile[] {
  const piles: Pile[] = [];
  for (const blank of order) {
    const last = piles.at(-1);
    if (last && isAlike(last.blank, blank)) last.count++;
    else piles.push({ blank, count: 1 });
  }
  return piles;
}

function isAlike(a: Blank, b: Blank): boolean {
  return a.kind === b.kind && a.turn === b.turn && a.turned === b.turned;
}

function narrowestSide({ width, height, turn }: Blank): number {
  return turn ? Math.min(width, height) : width;
}

function bestFit(piles: readonly Pile[], gap: Gap, room: number): Choice | undefined {
  let best = -1;
  let bestAt = -1;
  let across = false;
  for (let at = 0; at < piles.length && best < perfect; at++) {
    const { width, height, turn } = piles[at]!.blank;
    const upright = width <= gap.width && height <= room ? fitOf(width, height, gap) : -1;
    const turned = turn && height <= gap.width && width <= room ? fitOf(height, width, gap) : -1;
    if (upright <= best && turned <= best) continue;
    best = Math.max(upright, turned);
    bestAt = at;
    across = turned > upright;
  }
  return best < 0 ? undefined : { at: bestAt, across };
}

const perfect = 4;

/** How well a piece closes a gap: its whole width first, then the height of a wall, so that the edge stays flat. */
function fitOf(width: number, height: number, { width: gap, leftWall, rightWall }: Gap): number {
  const high = Math.max(leftWall, rightWall);
  if (width === gap) return height === high ? perfect : height < high ? 3 : 2;
  return height === high ? 1 : 0;
}
