import type { PieceKind } from '../../../../src/core/solve/cutting/pieces.ts';
import type { LengthProblem } from '../../../../src/core/solve/cutting/lengths.ts';
import type { SheetKind, SheetProblem } from '../../../../src/core/solve/cutting/sheets.ts';

/** What the best plan of all comes to: value, number of sheets, and (above 0) the largest offcut of one of them. */
export type Best = readonly [value: number, sheets: number, offcut: number];

interface Kind {
  readonly value: number;
  readonly count: number;
  /** The largest offcut that the pieces of these indexes leave; undefined where they do not fit. */
  readonly offcut: (members: readonly number[]) => number | undefined;
}

/** Slow and simple: every way to share out the pieces, on every kind of sheet, each laid at every whole place. */
export function bestSheets({ sheets, pieces, gap = 0 }: SheetProblem): Best | undefined {
  const priced = sheets.every(({ price }) => price !== undefined);
  const all = pieces.flatMap((piece) => Array.from({ length: piece.count }, () => piece));
  return bestOf(
    all.length,
    sheets.map((sheet) => ({
      value: priced ? sheet.price! : sheet.width * sheet.height,
      count: sheet.count ?? Infinity,
      offcut: (members) =>
        sheetOffcut(
          sheet,
          members.map((member) => all[member]!),
          gap,
        ),
    })),
  );
}

export function bestLengths({ stock, pieces, gap = 0 }: LengthProblem): Best | undefined {
  const priced = stock.every(({ price }) => price !== undefined);
  const all = pieces.flatMap(({ length, count }) => Array.from({ length: count }, () => length));
  return bestOf(
    all.length,
    stock.map(({ length, price, count = Infinity }) => ({
      value: priced ? price! : length,
      count,
      offcut: (members) => {
        const used = members.reduce((sum, member) => sum + all[member]! + gap, -gap);
        return used <= length ? length - used : undefined;
      },
    })),
  );
}

function bestOf(pieces: number, kinds: readonly Kind[]): Best | undefined {
  let best: Best | undefined;
  const remember = new Map<string, number | undefined>();
  const offcutOf = (kind: number, members: readonly number[]): number | undefined => {
    const key = `${kind}:${members}`;
    if (!remember.has(key)) remember.set(key, kinds[kind]!.offcut(members));
    return remember.get(key);
  };
  const assign = (groups: readonly number[][], at: number, used: readonly number[], offcut: number): void => {
    if (at === groups.length) {
      const value = used.reduce((sum, count, kind) => sum + count * kinds[kind]!.value, 0);
      const plan: Best = [value, groups.length, offcut];
      if (!best || isBetter(plan, best)) best = plan;
      return;
    }
    kinds.forEach(({ count }, kind) => {
      const over = used[kind]! < count ? offcutOf(kind, groups[at]!) : undefined;
      if (over === undefined) return;
      assign(
        groups,
        at + 1,
        used.map((n, other) => (other === kind ? n + 1 : n)),
        Math.max(offcut, over),
      );
    });
  };
  for (const groups of partitions(pieces))
    assign(
      groups,
      0,
      kinds.map(() => 0),
      0,
    );
  return best;
}

function isBetter(a: Best, b: Best): boolean {
  return a[0] - b[0] || a[1] - b[1] ? (a[0] - b[0] || a[1] - b[1]) < 0 : a[2] > b[2];
}

function partitions(count: number): number[][][] {
  if (count === 0) return [[]];
  const last = count - 1;
  return partitions(last).flatMap((groups) => [
    [...groups, [last]],
    ...groups.map((_, at) => groups.map((group, other) => (other === at ? [...group, last] : group))),
  ]);
}

function sheetOffcut(sheet: SheetKind, members: readonly PieceKind[], gap: number): number | undefined {
  for (let used = 1; used <= sheet.height; used++)
    if (canLie(sheet.width, used, members, [], gap)) return sheet.width * (sheet.height - used);
  return undefined;
}

interface Lain {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function canLie(
  width: number,
  height: number,
  rest: readonly PieceKind[],
  lain: readonly Lain[],
  gap: number,
): boolean {
  const [piece, ...others] = rest;
  if (!piece) return true;
  const ways = piece.turn
    ? [
        [piece.width, piece.height],
        [piece.height, piece.width],
      ]
    : [[piece.width, piece.height]];
  for (const [w, h] of ways as [number, number][])
    for (let x = 0; x + w <= width; x++)
      for (let y = 0; y + h <= height; y++) {
        const clear = lain.every(
          (o) =>
            x + w + gap <= o.x || o.x + o.width + gap <= x || y + h + gap <= o.y || o.y + o.height + gap <= y,
        );
        if (clear && canLie(width, height, others, [...lain, { x, y, width: w, height: h }], gap))
          return true;
      }
  return false;
}
