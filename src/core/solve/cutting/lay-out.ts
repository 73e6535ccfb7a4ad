import type { Blank, Placement } from './pieces.ts';
import { emptySkyline, layAt, levelUp, lowestGap, type Gap } from './skyline.ts';

/** What lies on one sheet or strip, and which blanks found no room. */
export interface Layout {
  readonly placements: readonly Placement[];
  readonly left: readonly Blank[];
  /** Height of what is laid. */
  readonly top: number;
}

interface Choice {
  /** Index into what is still to be laid. */
  readonly at: number;
  readonly blank: Blank;
  readonly width: number;
  readonly height: number;
  readonly turned: boolean;
  readonly fit: number;
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
  const rest = [...order];
  const placements: Placement[] = [];
  let top = 0;
  for (let gap = lowestGap(skyline); gap && rest.length > 0; gap = lowestGap(skyline)) {
    const choice = bestFit(rest, gap, height - gap.y);
    if (!choice) {
      if (!levelUp(skyline, gap)) break;
      continue;
    }
    const x = gap.leftWall >= gap.rightWall ? gap.x : gap.x + gap.width - choice.width;
    layAt(skyline, gap.at, x, choice.width, choice.height);
    placements.push({ piece: choice.blank.kind, x, y: gap.y, turned: choice.turned });
    top = Math.max(top, gap.y + choice.height);
    rest.splice(choice.at, 1);
  }
  return { placements, left: rest, top };
}

function bestFit(rest: readonly Blank[], gap: Gap, room: number): Choice | undefined {
  let best: Choice | undefined;
  for (let at = 0; at < rest.length && best?.fit !== perfect; at++) {
    const blank = rest[at]!;
    const { width, height, turn, turned } = blank;
    if (at > 0 && isAlike(rest[at - 1]!, blank)) continue;
    best = better(best, { at, blank, width, height, turned, fit: 0 }, gap, room);
    if (turn)
      best = better(best, { at, blank, width: height, height: width, turned: true, fit: 0 }, gap, room);
  }
  return best;
}

function better(best: Choice | undefined, choice: Choice, gap: Gap, room: number): Choice | undefined {
  if (choice.width > gap.width || choice.height > room) return best;
  const fit = fitOf(choice.width, choice.height, gap);
  return !best || fit > best.fit ? { ...choice, fit } : best;
}

function isAlike(a: Blank, b: Blank): boolean {
  return a.kind === b.kind && a.turn === b.turn && a.turned === b.turned;
}

const perfect = 4;

/** How well a piece closes a gap: its whole width first, then the height of a wall, so that the edge stays flat. */
function fitOf(width: number, height: number, { width: gap, leftWall, rightWall }: Gap): number {
  const [high, low] = leftWall >= rightWall ? [leftWall, rightWall] : [rightWall, leftWall];
  if (width === gap) return height === high ? perfect : height === low ? 3 : height < high ? 3 : 2;
  return height === high ? 1 : 0;
}
